import { type BasisPoints, roundedQuotient } from "@buildproof/units";

const BASIS = 10_000n;

/** round(net·r), or round(gross·r/(1 + r)) where the amount includes the tax; halves towards plus infinity. */
export function taxOf(amount: bigint, rate: BasisPoints, includesTax: boolean): bigint {
  const r = BigInt(rate);
  return roundedQuotient(amount * r, includesTax ? BASIS + r : BASIS);
}
