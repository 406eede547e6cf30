import { type BasisPoints, basisPoints, type MinorUnits, roundedQuotient } from "@buildproof/units";

/**
 * Gross margin as a share of the sell price without tax: (sell − cost) ÷ sell. Null when nothing is
 * charged, because a share of nothing says nothing. This is the only definition of margin.
 *
 * @source  Definition of gross profit margin; rounded to a whole basis point, halves up.
 * @vectors shared/reference/margin.json
 */
export function margin(sellMinor: MinorUnits, costMinor: MinorUnits): BasisPoints | null {
  if (sellMinor === 0) return null;
  const profit = BigInt(sellMinor) - BigInt(costMinor);
  return basisPoints(Number(roundedQuotient(profit * 10_000n, BigInt(sellMinor))));
}
