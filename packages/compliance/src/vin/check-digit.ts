const LETTER_VALUES: Readonly<Record<string, number>> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
};
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/**
 * The check digit that position 9 of a well-formed VIN should hold: 0 to 9, or X for ten.
 *
 * @source  49 CFR 565.15(c): Tables III to VI, remainder of the weighted sum over 11.
 * @vectors shared/reference/vin.json
 */
export function checkDigit(vin: string): string {
  const sum = [...vin].reduce((total, character, index) => {
    const value = LETTER_VALUES[character] ?? Number(character);
    return total + value * (WEIGHTS[index] ?? 0);
  }, 0);
  return sum % 11 === 10 ? "X" : String(sum % 11);
}
