import { optionComponents } from "./item-component-options";

/** What each item is on the vehicle, by the components of the catalogue. */
const itemComponents: Readonly<Record<string, string>> = {
  "blower-24-92": "blower",
  "blower-19-88": "blower",
  "blower-19-80": "blower",
  "blower-19-gt44": "blower",
  "charge-cooler": "cooler",
  "charge-cooler-hot-kit": "cooler",
  "belt-8-rib": "belt-drive",
  "belt-10-rib": "belt-drive",
  "crank-pin-kit": "belt-drive",
  "ute-intercooler": "intercooler",
  "hp-pump-upgrade": "high-pressure-pump",
  "hp-pipes-and-seals": "fuel-line",
  "port-injection-kit": "port-injectors",
  "tank-pump-upgrade": "tank-pump",
  "fuel-content-sensor": "fuel-line",
  "runs-on-e10": "fuel",
  "runs-on-e85": "fuel",
  "plugs-one-step": "plugs",
  "plugs-two-step": "plugs",
  "boost-calibration": "calibration",
  "controller-licence-credit": "calibration",
  "map-95": "octane-map",
  "tow-calibration-diesel": "diesel-calibration",
  "exhaust-probe": "electrical",
  "alternator-upgrade": "electrical",
  "cat-back-exhaust": "exhaust",
  "headers-gt44": "exhaust",
  "gearbox-calibration": "gearbox-calibration",
  "gearbox-cooler": "gearbox-work",
  "clutch-800": "clutch",
  "dual-mass-flywheel": "clutch",
  "flywheel-bolts": "clutch",
  "lower-final-drive": "final-drive",
  "tyres-33": "tyre",
  "tyres-tall-small-4wd": "tyre",
  "spare-carrier": "wheel",
  "lift-50": "suspension",
  "front-springs": "suspension",
  "gvm-kit": "suspension",
  "speedometer-recalibration": "speedometer",
  "tyre-placard": "placard",
  "tow-3000": "tow",
  "tow-2000": "tow",
  "brake-controller": "brake-controller",
  "twelve-pin-socket": "tow-equipment",
  "dark-trim": "appearance",
  "driving-lamps": "appearance",
  "front-bar": "appearance",
  "high-mount-winch": "appearance",
  ...optionComponents,
};

/** Of an item of the demo: what it is; work and fees by their kind where nothing else is said. */
export function componentOf({ id, kind }: { readonly id: string; readonly kind: string }): string {
  const said = itemComponents[id];
  if (said) return said;
  if (kind === "operation") return "operation";
  return kind === "fee" || kind === "consumable" || kind === "bought-in" ? "fee" : "";
}
