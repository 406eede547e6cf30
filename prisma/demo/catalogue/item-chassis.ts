import { at, type ItemChassis } from "./chassis-of-item";
import { optionChassis } from "./item-chassis-options";
import type { Figure } from "./types";

/*
 * What the chassis has to know of an item. `frontAxleShare`: how much of its mass the front axle carries;
 * above 1 ahead of that axle, below 0 behind the rear one. Invented for the demo.
 */

const itemChassis: Readonly<Record<string, ItemChassis>> = {
  "blower-24-92": at(0.86),
  "blower-19-88": at(0.86),
  "blower-19-80": at(0.86),
  "blower-19-gt44": at(0.86),
  "charge-cooler": at(1.2),
  "charge-cooler-hot-kit": at(1.15),
  "belt-8-rib": at(1.05),
  "belt-10-rib": at(1.05),
  "crank-pin-kit": at(1.05),
  "ute-intercooler": at(1.2),
  "hp-pump-upgrade": at(0.9),
  "hp-pipes-and-seals": at(0.9),
  "port-injection-kit": at(0.9),
  "tank-pump-upgrade": at(0.15),
  "alternator-upgrade": at(1),
  "cat-back-exhaust": at(0.2),
  "cat-back-20": at(0.2),
  "gearbox-cooler": at(1.15),
  "clutch-800": at(0.8),
  "lower-final-drive": { driveline: { finalDrive: 4.556 } },
  // Two in front, two behind, and the spare behind the rear axle.
  "tyres-33": {
    masses: { frontAxleShare: 0.34, replacesFact: "tyreSetKg" },
    tyre: { designation: "33x12.50R18LT 118N" },
  },
  "tyres-tall-small-4wd": {
    masses: { frontAxleShare: 0.34, replacesFact: "tyreSetKg" },
    tyre: { designation: "235/75R15 105S" },
  },
  "spare-carrier": at(-0.35),
  "lift-50": { masses: { frontAxleShare: 0.5, replacesFact: "liftKg" } },
  "front-springs": { masses: { frontAxleShare: 1, frontRatingAddKg: 60 } },
  "gvm-kit": { masses: { gvmAddKg: 250, frontRatingAddKg: 60, rearRatingAddKg: 250 } },
  "speedometer-recalibration": { tyre: { speedometerOverPct: 2 } },
  "tyre-placard": { tyre: { placardKmh: 140 } },
  "tow-3000": { masses: { trailerKg: 3000, ballKg: 300 } },
  "tow-2000": { masses: { trailerKg: 2000, ballKg: 200 } },
  "brake-controller": at(0.75),
  "twelve-pin-socket": at(-0.35),
  "driving-lamps": at(1.3),
  "front-bar": at(1.3),
  "high-mount-winch": at(1.28),
  ...optionChassis,
};

/** The chassis figures of an item, as the catalogue keeps them; empty where it has none. */
export function chassisFiguresOf(itemId: string): { readonly [name: string]: Figure } {
  const { masses, tyre, driveline } = itemChassis[itemId] ?? {};
  return {
    ...(masses ? { masses } : {}),
    ...(tyre ? { tyre } : {}),
    ...(driveline ? { driveline } : {}),
  };
}

/** The fact with the mass of what an item takes the place of, if it takes any. */
export function replacedBy(itemId: string): string | undefined {
  return itemChassis[itemId]?.masses?.replacesFact;
}

/** The whole trailer of a towing duty, its ball load included; null of what is no such duty. */
export function trailerKgOf(itemId: string): number | null {
  return itemChassis[itemId]?.masses?.trailerKg ?? null;
}

/** How much of an item's mass the front axle carries; half where nothing is said. */
export function frontAxleShareOf(itemId: string): number {
  return itemChassis[itemId]?.masses?.frontAxleShare ?? 0.5;
}
