import type { SeededRandom } from "./seeded-random";

/** 6X to 60 are allotted to no country, so no maker carries this code. */
const UNASSIGNED_MAKER = "6ZZ";
const VALUES: Readonly<Record<string, number>> = {
  ...{ A: 1, B: 2, C: 3, D: 4, E: 5, F: 6, G: 7, H: 8, J: 1, K: 2, L: 3, M: 4, N: 5, P: 7, R: 9 },
  ...{ S: 2, T: 3, U: 4, V: 5, W: 6, X: 7, Y: 8, Z: 9 },
};
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];
const LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";

/** A well-formed number that no vehicle carries, with the check digit of 49 CFR 565.15(c) in place nine. */
export function inventedVin(random: SeededRandom): string {
  const letters = (count: number) => Array.from({ length: count }, () => random.pick([...LETTERS])).join("");
  const digits = (count: number) => Array.from({ length: count }, () => random.integer(0, 9)).join("");
  const before = `${UNASSIGNED_MAKER}${letters(3)}${digits(1)}${letters(1)}`;
  const after = `${random.pick([..."HJKLMNPRST"])}${letters(1)}${digits(6)}`;
  return `${before}${checkDigit(`${before}0${after}`)}${after}`;
}

function checkDigit(vin: string): string {
  const sum = [...vin].reduce(
    (total, character, index) => total + (VALUES[character] ?? Number(character)) * (WEIGHTS[index] ?? 0),
    0,
  );
  return sum % 11 === 10 ? "X" : String(sum % 11);
}
