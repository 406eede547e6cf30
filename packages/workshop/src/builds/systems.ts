/** The lines of the build sheet, in the order of the page. */
export const systems = [
  { code: "air", name: "Air" },
  { code: "fuel", name: "Fuel" },
  { code: "ignition-calibration", name: "Ignition and calibration" },
  { code: "exhaust", name: "Exhaust" },
  { code: "driveline", name: "Driveline" },
  { code: "wheels-tyres", name: "Wheels and tyres" },
  { code: "brakes", name: "Brakes" },
  { code: "towing", name: "Towing" },
  { code: "appearance", name: "Appearance" },
  { code: "operations", name: "Workshop and dyno" },
  { code: "fees", name: "Fees and consumables" },
] as const;

export type SystemCode = (typeof systems)[number]["code"];

/** The system of the build sheet that a link of the chain is shown under. */
const systemOfLink: Readonly<Record<string, SystemCode>> = {
  "belt-drive": "air",
  cooler: "air",
  radiator: "air",
  "tank-pump": "fuel",
  "high-pressure-pump": "fuel",
  "injection-window": "fuel",
  gearbox: "driveline",
  clutch: "driveline",
  alternator: "ignition-calibration",
  payload: "towing",
  "front-axle": "wheels-tyres",
  "rear-axle": "wheels-tyres",
  brakes: "brakes",
  combination: "towing",
  towing: "towing",
};

const nameOfLink: Readonly<Record<string, string>> = {
  "belt-drive": "Belt drive",
  cooler: "Charge cooler",
  radiator: "Radiator",
  "tank-pump": "Tank pump",
  "high-pressure-pump": "High-pressure fuel pump",
  "injection-window": "Injection window",
  gearbox: "Gearbox",
  clutch: "Clutch",
  alternator: "Alternator",
  payload: "Payload",
  "front-axle": "Front axle",
  "rear-axle": "Rear axle",
  brakes: "Brakes on a grade",
  combination: "Combination mass",
  towing: "Towing on a grade",
};

/** Every link that a limit can be drawn on. */
export const chainLinks = Object.entries(nameOfLink).map(([code, name]) => ({ code, name }));

export function systemForLink(link: string): SystemCode {
  return systemOfLink[link] ?? "operations";
}

/** What a link of the chain is called on screens and papers. */
export function linkName(link: string): string {
  return nameOfLink[link] ?? link;
}

export function asSystemCode(code: string): SystemCode {
  return systems.find((system) => system.code === code)?.code ?? "operations";
}
