import {
  allocateByLargestRemainder,
  ImpossibleInputError,
  type MinorUnits,
  minorUnits,
} from "@buildproof/units";
import { lineAmount, minorUnitsOrRefusal } from "./line-amount";
import {
  type QuoteLines,
  type QuoteTotals,
  type TaxCategory,
  type TotalledLine,
  taxCategories,
} from "./quote-lines";
import { taxOf } from "./tax-of";
import { taxRate, usualRounding } from "./tax-rate";

/**
 * Net, tax and gross of every line and of the whole. Always gross = net + tax, and the lines add up
 * to the totals. All arithmetic is exact; each amount is rounded once.
 *
 * @source  GST Act 1999 (Cth) s 9-90 (both roundings); UAE Public Clarification VATP006 (per line).
 * @vectors shared/reference/gst-rounding.json, vat-rounding.json
 * @throws  ImpossibleInputError for a discount beyond what it is taken from, or an amount beyond 2^53 − 1.
 */
export function quoteTotals(quote: QuoteLines): QuoteTotals {
  const rounding = quote.rounding ?? usualRounding[quote.jurisdiction];
  const amounts = lessDiscount(quote);
  const taxes = rounding === "line" ? taxPerLine(quote, amounts) : taxPerCategory(quote, amounts);
  const lines = amounts.map((amount, index) => {
    const taxMinor = taxes[index] ?? minorUnits(0);
    return quote.pricesIncludeTax
      ? { netMinor: minorUnits(amount - taxMinor), taxMinor, grossMinor: amount }
      : {
          netMinor: amount,
          taxMinor,
          grossMinor: minorUnitsOrRefusal(BigInt(amount) + BigInt(taxMinor), `lines[${index}]`),
        };
  });
  return {
    currency: quote.currency,
    rounding,
    lines,
    ...sumOfLines(lines),
    taxes: taxCategories
      .filter((category) => quote.lines.some(({ taxCategory }) => taxCategory === category))
      .map((taxCategory) => ({
        taxCategory,
        ratePct: taxRate(quote.jurisdiction, taxCategory) / 100,
        ...sumOfLines(lines.filter((_, index) => quote.lines[index]?.taxCategory === taxCategory)),
      })),
  };
}

function lessDiscount(quote: QuoteLines): readonly MinorUnits[] {
  const amounts = quote.lines.map((line, index) => lineAmount(line, `lines[${index}]`));
  const discount = quote.discountMinor ?? minorUnits(0);
  const sum = amounts.reduce((total, amount) => total + BigInt(amount), 0n);
  const isWithin =
    sum < 0n ? discount <= 0 && BigInt(discount) >= sum : discount >= 0 && BigInt(discount) <= sum;
  if (!isWithin) {
    throw new ImpossibleInputError(
      "discount-out-of-range",
      `The discount must be between 0 and what the lines add up to (${sum}), not ${discount}.`,
      "discountMinor",
    );
  }
  const shares = allocateByLargestRemainder(discount, amounts);
  return amounts.map((amount, index) => minorUnits(amount - (shares[index] ?? 0)));
}

function taxPerLine(quote: QuoteLines, amounts: readonly MinorUnits[]): readonly MinorUnits[] {
  return quote.lines.map(({ taxCategory }, index) => {
    const rate = taxRate(quote.jurisdiction, taxCategory);
    return minorUnits(taxOf(BigInt(amounts[index] ?? 0), rate, quote.pricesIncludeTax));
  });
}

/** Tax once per category, spread back over its lines. */
function taxPerCategory(quote: QuoteLines, amounts: readonly MinorUnits[]): readonly MinorUnits[] {
  const taxes = amounts.map(() => minorUnits(0));
  for (const category of new Set<TaxCategory>(quote.lines.map(({ taxCategory }) => taxCategory))) {
    const indexes = quote.lines.flatMap((line, index) => (line.taxCategory === category ? [index] : []));
    const weights = indexes.map((index) => amounts[index] ?? minorUnits(0));
    const taxable = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
    const rate = taxRate(quote.jurisdiction, category);
    const tax = minorUnitsOrRefusal(taxOf(taxable, rate, quote.pricesIncludeTax), "lines");
    const shares = allocateByLargestRemainder(tax, weights);
    indexes.forEach((index, position) => {
      taxes[index] = shares[position] ?? minorUnits(0);
    });
  }
  return taxes;
}

function sumOfLines(lines: readonly TotalledLine[]): TotalledLine {
  const sum = (measure: keyof TotalledLine) =>
    minorUnitsOrRefusal(
      lines.reduce((total, line) => total + BigInt(line[measure]), 0n),
      "lines",
    );
  return { netMinor: sum("netMinor"), taxMinor: sum("taxMinor"), grossMinor: sum("grossMinor") };
}
