import type { Quantity } from "./quantity";

/** Hundredths of a per cent, whole: 32.5 % is 3250. */
export type BasisPoints = Quantity<"BasisPoints">;

export function basisPoints(value: number): BasisPoints {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(`A rate must be a whole number of basis points, not ${value}.`);
  }
  return value as BasisPoints; // checked above
}
