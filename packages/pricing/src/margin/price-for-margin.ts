import { type MinorUnits, minorUnits, roundedQuotient } from "@buildproof/units";

/**
 * What work would have to sell at, without tax, to earn at its actual cost the share that was quoted. Null when
 * nothing was quoted to cost anything: then every price has the same share.
 *
 * @source  From the definition of margin: (price − actual) ÷ price = (sell − quoted) ÷ sell; halves up.
 * @valid   sell above 0; quoted and actual cost 0 or more; all of the same jobs.
 */
export function priceForMargin(
  actualCostMinor: MinorUnits,
  quoted: { readonly sellMinor: MinorUnits; readonly costMinor: MinorUnits },
): MinorUnits | null {
  if (quoted.sellMinor <= 0) throw new RangeError("A margin to keep is of something that was charged.");
  if (actualCostMinor < 0 || quoted.costMinor < 0) throw new RangeError("A cost is 0 or more.");
  if (quoted.costMinor === 0) return null;
  return minorUnits(
    roundedQuotient(BigInt(actualCostMinor) * BigInt(quoted.sellMinor), BigInt(quoted.costMinor)),
  );
}
