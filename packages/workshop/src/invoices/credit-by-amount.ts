import { quoteTotals } from "@buildproof/pricing";
import { allocateByLargestRemainder, minorUnits } from "@buildproof/units";
import type { InvoiceContent, InvoiceLine } from "./invoice-content";

/** A position that no line of a version has: a reduction concerns the whole. */
const OF_THE_WHOLE = -1;

/**
 * A reduction of the whole, tax included, as lines to credit: one per category of tax, each its share of the
 * invoice, with the tax that is in it.
 */
export function creditByAmount(
  invoice: InvoiceContent,
  grossMinor: number,
  description: string,
): readonly InvoiceLine[] {
  const { taxes, currency, jurisdiction } = invoice;
  const weights = taxes.map(({ netMinor, taxMinor }) => minorUnits(netMinor + taxMinor));
  const shares = allocateByLargestRemainder(minorUnits(grossMinor), weights);
  return taxes.flatMap(({ taxCategory, ratePct }, at) => {
    const share = shares[at] ?? minorUnits(0);
    if (share === 0) return [];
    const { netMinor, taxMinor } = quoteTotals({
      currency,
      jurisdiction,
      pricesIncludeTax: true,
      lines: [{ quantity: 1, unitPriceMinor: share, taxCategory }],
    });
    return [
      {
        position: OF_THE_WHOLE,
        code: "",
        description,
        quantity: "1",
        unit: "each",
        unitPriceMinor: netMinor,
        discountPct: "0",
        taxCategory,
        ratePct,
        netMinor,
        taxMinor,
        grossMinor: share,
      },
    ];
  });
}
