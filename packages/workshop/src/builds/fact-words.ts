type Fact = {
  readonly code: string;
  /** What it is called where it is chosen. */
  readonly label: string;
  readonly unit: string;
  /** Something a vehicle has at least so much of, or something that simply is so. */
  readonly is: "measure" | "so";
  readonly atLeast: (amount: number) => string;
};

const measure = (code: string, label: string, unit: string, after = ""): Fact => ({
  code,
  label,
  unit,
  is: "measure",
  atLeast: (amount) => `at least ${figure(amount)}${unit ? ` ${unit}` : ""}${after}`,
});
const so = (code: string, label: string, words: string): Fact => ({
  code,
  label,
  unit: "",
  is: "so",
  atLeast: () => words,
});

/** What rules can ask of a vehicle, its place, its inspection and its forecast, in the words of the trade. */
export const conditionFacts: readonly Fact[] = [
  {
    ...measure("fuelOctaneRon", "Octane of the fuel bought", "RON"),
    atLeast: (octane) => `petrol ${octane} recorded as the fuel the owner buys`,
  },
  so("inspectionPassed", "Inspection passed", "a passed pre-build inspection that still stands"),
  measure("odometerKm", "Odometer", "km", " on the odometer"),
  measure("crankTorqueNm", "Torque at the crank", "N·m", " at the crank, by the forecast"),
  measure("trailerGtmKg", "Loaded trailer", "kg", " of loaded trailer"),
  measure("designAmbientC", "Hot day of the site", "°C", " on the site’s hot day"),
  {
    ...measure("liftMm", "Lift", "mm"),
    atLeast: (height) => `a lift of ${figure(height)} mm on the vehicle`,
  },
  measure("bonnetClearanceMm", "Bonnet clearance", "mm", " of bonnet clearance"),
  {
    ...measure("hubAdaptors", "Hub adaptors", ""),
    atLeast: (count) => `${count} hub adaptors of this stud pattern`,
  },
  so("provenTwoWheelMode", "Two-wheel mode proven", "a two-wheel dyno mode proven for this model"),
  so("dieselFilterFitted", "Diesel filter", "the diesel filter, fitted and working"),
  so("exhaustRecirculationFitted", "Exhaust recirculation", "the exhaust recirculation, fitted and working"),
  so("catalystsFitted", "Catalysts", "the catalysts, fitted and working"),
  so("driverCamera", "Driver-assistance camera", "a driver-assistance camera"),
  so("limitedSlipFitted", "Limited-slip differential", "a limited-slip differential"),
  {
    ...measure("wheelInches", "Wheels", "in"),
    atLeast: (inches) => `wheels of at least ${figure(inches)} inches`,
  },
  {
    ...measure("towBarRatedKg", "Tow bar rated", "kg"),
    atLeast: (mass) => `a tow bar rated ${figure(mass)} kg or more`,
  },
  so("directInjection", "Direct injection", "direct injection"),
  so("tallTyres", "Tall tyres", "tall tyres on it already"),
  so("e85SoldNearby", "E85 sold nearby", "E85 that the owner can buy"),
];

/** Facts in words; one that is not here is shown by its name. */
export function factWords(fact: string, atLeast: number): string {
  return (
    conditionFacts.find(({ code }) => code === fact)?.atLeast(atLeast) ?? `${fact} of at least ${atLeast}`
  );
}

/** The same denied, as what a build has: "less than 2,000 kg of loaded trailer", "no direct injection". */
export function lackingFactWords(fact: string, atLeast: number): string {
  const words = factWords(fact, atLeast);
  return words.startsWith("at least ")
    ? words.replace("at least", "less than")
    : `no ${words.replace(/^(a|the) /, "")}`;
}

function figure(amount: number): string {
  return new Intl.NumberFormat("en-AU", { maximumFractionDigits: 1 }).format(amount);
}

const bases: Readonly<Record<string, string>> = {
  highPressureFuelKgPerH: "High-pressure fuel, kg/h",
  lowPressureFuelLPerH: "Tank pump flow, L/h",
  injectionWindowMs: "Injection window, ms",
  gearboxTorqueNm: "Gearbox torque, N·m",
  clutchStaticNm: "Clutch, static, N·m",
  chargeTempLimitC: "Charge temperature limit, °C",
  beltDriveKw: "Belt drive, kW",
  alternatorSpareA: "Alternator, spare, A",
  payloadSpareKg: "Payload, spare, kg",
  frontAxleSpareKg: "Front axle, spare, kg",
  towOnGradeKg: "Trailer held on a grade, kg",
  tyreSetKg: "Tyres on it, kg",
  liftKg: "Lift on it, kg",
};

/** What a vehicle gives by itself, as it is chosen from a list. */
export function baseName(fact: string): string {
  return bases[fact] ?? conditionFacts.find(({ code }) => code === fact)?.label ?? fact;
}
