import type { FactRange, ProofWords } from "@buildproof/prerequisites";

/** What the same model of vehicle may differ in from owner to owner. */
export type VaryingFact = {
  readonly fact: string;
  /** Whether the engine burns petrol; where nothing is known it may be either. */
  readonly range: (isPetrol: boolean) => FactRange;
  readonly words: (value: number, how: Parameters<ProofWords["fact"]>[2]) => string;
};

const number = (value: number): string => new Intl.NumberFormat("en-AU").format(value);

function measure(fact: string, range: VaryingFact["range"], what: (amount: string) => string): VaryingFact {
  const before = { is: "", "at-least": "at least ", below: "less than " };
  return { fact, range, words: (value, how) => what(before[how] + number(value)) };
}

/** Something that is so or not: 1 or 0. */
function state(fact: string, range: VaryingFact["range"], isSo: string, isNot: string): VaryingFact {
  return { fact, range, words: (value, how) => ((how === "below") === value >= 1 ? isNot : isSo) };
}

const either: FactRange = { oneOf: [0, 1] };

/** As wide as a vehicle may be entered (vehicle-fields.ts), so that what is proven holds for every one. */
export const varyingFacts: readonly VaryingFact[] = [
  measure(
    "odometerKm",
    () => ({ from: 0, to: 2_000_000 }),
    (km) => `${km} km on the odometer`,
  ),
  measure(
    "fuelOctaneRon",
    (isPetrol) => (isPetrol ? { from: 80, to: 120 } : 0),
    (octane) => `fuel of ${octane} RON`,
  ),
  state("e85SoldNearby", (isPetrol) => (isPetrol ? either : 0), "E85 sold nearby", "no E85 sold nearby"),
  measure(
    "trailerGtmKg",
    () => ({ from: 0, to: 10_000 }),
    (kg) => `${kg} kg of loaded trailer`,
  ),
  state(
    "inspectionPassed",
    () => either,
    "a passed inspection that still stands",
    "no passed inspection that still stands",
  ),
  // What the engine makes depends on the items; here it may be anything, and what holds for anything holds for that.
  measure(
    "crankTorqueNm",
    () => ({ from: 0, to: 5_000 }),
    (torque) => `${torque} N·m at the crank by the forecast`,
  ),
];

/** A varying fact in words; a "state" of 0 says what is not so. */
export function varyingFactWords(
  fact: string,
  value: number,
  how: Parameters<ProofWords["fact"]>[2],
): string {
  return varyingFacts.find((each) => each.fact === fact)?.words(value, how) ?? `${fact} ${how} ${value}`;
}
