import { type QuoteLine, type QuoteLines, quoteTotals } from "@buildproof/pricing";
import { minorUnits } from "@buildproof/units";
import type { Benchmark } from "./benchmark";

const lines = Array.from(
  { length: 200 },
  (_, at): QuoteLine => ({
    quantity: (at % 7) + 1,
    unitPriceMinor: minorUnits(1_999 + at * 37),
    taxCategory: at % 9 === 0 ? "Z" : "S",
  }),
);
const quote: QuoteLines = { currency: "AUD", jurisdiction: "AU", pricesIncludeTax: false, lines };

/** Exact totals of a long quote, against a loop of whole numbers that knows no discount, share or rounding rule. */
export const quoteTotalsBenchmark: Benchmark = {
  name: "quote totals, 200 lines",
  ours: { name: "quoteTotals", run: () => quoteTotals(quote) },
  baseline: { name: "plain loop", run: plainLoop },
};

function plainLoop(): { net: number; tax: number; gross: number } {
  let net = 0;
  let taxable = 0;
  for (const line of lines) {
    const amount = Number(line.quantity) * line.unitPriceMinor;
    net += amount;
    if (line.taxCategory === "S") taxable += amount;
  }
  const tax = Math.round(taxable / 10);
  return { net, tax, gross: net + tax };
}
