import { type BasisPoints, type MinorUnits, minorUnits, roundedQuotient } from "@buildproof/units";

export type DepositTerms = {
  /** What the customer pays in all, tax included. */
  readonly totalMinor: MinorUnits;
  /** The usual share of the total. */
  readonly share: BasisPoints;
  /** What the parts that cannot be returned cost us, landed. */
  readonly nonReturnableCostMinor: MinorUnits;
};

export type Deposit = {
  readonly depositMinor: MinorUnits;
  readonly balanceMinor: MinorUnits;
  readonly because: "share-of-total" | "non-returnable-parts";
};

/**
 * The larger of the usual share and the landed cost of what cannot be returned, never more than the
 * total. Deposit and balance add up to the total.
 *
 * @source  Common practice of the trade, no published source; halves are rounded up.
 * @vectors shared/reference/deposit.json
 */
export function depositFor({ totalMinor, share, nonReturnableCostMinor }: DepositTerms): Deposit {
  if (totalMinor < 0) throw new RangeError("A deposit is asked on a total of 0 or more.");
  if (share < 0 || share > 10_000) throw new RangeError("A deposit share is between 0 and 100 per cent.");
  if (nonReturnableCostMinor < 0) throw new RangeError("A landed cost is 0 or more.");
  const byShare = minorUnits(roundedQuotient(BigInt(totalMinor) * BigInt(share), 10_000n));
  const larger = Math.max(byShare, nonReturnableCostMinor);
  const depositMinor = minorUnits(Math.min(larger, totalMinor));
  return {
    depositMinor,
    balanceMinor: minorUnits(totalMinor - depositMinor),
    because: nonReturnableCostMinor > byShare ? "non-returnable-parts" : "share-of-total",
  };
}
