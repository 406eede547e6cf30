import { floorQuotient } from "./integer-quotient";
import { type MinorUnits, minorUnits } from "./minor-units";

/**
 * Splits an amount in proportion to weights so that the parts add up to it exactly: every part is
 * rounded down, and what is left goes, one unit each, to the largest remainders (ties to the earlier).
 *
 * @source Largest-remainder (Hamilton) apportionment.
 * @valid  Weights of either sign whose sum is not zero; a zero sum is accepted only for a zero amount.
 */
export function allocateByLargestRemainder(
  amount: MinorUnits,
  weights: readonly MinorUnits[],
): readonly MinorUnits[] {
  const total = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
  if (total === 0n) {
    if (amount !== 0)
      throw new RangeError("An amount cannot be shared out over weights that add up to zero.");
    return weights.map(() => minorUnits(0));
  }
  const divisor = total < 0n ? -total : total;
  const shares = weights.map((weight, index) => {
    const numerator = BigInt(amount) * BigInt(weight) * (total < 0n ? -1n : 1n);
    const floor = floorQuotient(numerator, divisor);
    return { index, floor, remainder: numerator - floor * divisor };
  });
  const left = Number(BigInt(amount) - shares.reduce((sum, share) => sum + share.floor, 0n));
  const raised = new Set(
    shares
      .toSorted(
        (a, b) => Number(b.remainder > a.remainder) - Number(b.remainder < a.remainder) || a.index - b.index,
      )
      .slice(0, left)
      .map((share) => share.index),
  );
  return shares.map((share) => minorUnits(share.floor + (raised.has(share.index) ? 1n : 0n)));
}
