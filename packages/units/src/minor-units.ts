import type { Quantity } from "./quantity";

/** Money in the smallest unit of its currency (cents, fils): a whole number that a double holds exactly. */
export type MinorUnits = Quantity<"MinorUnits">;

/** Refuses fractions and anything beyond ±(2^53 − 1), where whole numbers would begin to merge. */
export function minorUnits(value: number | bigint): MinorUnits {
  const number = Number(value);
  if (!Number.isSafeInteger(number)) {
    throw new RangeError(`An amount must be a whole number of minor units within ±(2^53 − 1), not ${value}.`);
  }
  // The check above is what makes it an amount; −0 is written as 0.
  return (number === 0 ? 0 : number) as MinorUnits;
}

/** Exact sum; refuses a total that no longer fits. */
export function sumMinorUnits(amounts: Iterable<MinorUnits>): MinorUnits {
  let sum = 0n;
  for (const amount of amounts) sum += BigInt(amount);
  return minorUnits(sum);
}
