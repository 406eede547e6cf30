import { depositFor, quoteTotals } from "@buildproof/pricing";
import { basisPoints, coefficientAt, exactDecimal, minorUnits, roundedQuotient } from "@buildproof/units";
import type { DraftLine } from "./draft-line";
import type { QuoteSite } from "./quote-site";

export type Amounts = { readonly netMinor: bigint; readonly taxMinor: bigint; readonly grossMinor: bigint };

/** What is agreed about the whole, in minor units without tax. */
export type WholeTerms = {
  /** Off the whole quote, beside what is given off single lines. */
  readonly discountMinor: bigint;
  /** Landed cost of what cannot go back. */
  readonly nonReturnableMinor: bigint;
};

export type PricedLines = {
  readonly lines: readonly (DraftLine & Amounts)[];
  readonly totals: Amounts & WholeTerms & { readonly depositMinor: bigint };
  /** What the lines would cost without any discount, without tax. */
  readonly listMinor: bigint;
};

/**
 * Every amount of a version, from its lines. A discount off the whole never exceeds what there is to pay. The
 * limits of what may be typed keep each amount far below 2^53.
 */
export function priceLines(
  site: Pick<QuoteSite, "currency" | "jurisdiction" | "depositSharePct">,
  lines: readonly DraftLine[],
  whole: WholeTerms,
): PricedLines {
  const undiscounted = lines.map((line) => ({ ...line, discountPct: "0" }));
  const listMinor = BigInt(quoteTotals(question(site, undiscounted, 0n)).netMinor);
  const dueMinor = BigInt(quoteTotals(question(site, lines, 0n)).netMinor);
  const discountMinor = whole.discountMinor < dueMinor ? whole.discountMinor : dueMinor;
  const sold = quoteTotals(question(site, lines, discountMinor));
  const { depositMinor } = depositFor({
    totalMinor: sold.grossMinor,
    share: basisPoints(site.depositSharePct * 100),
    nonReturnableCostMinor: minorUnits(whole.nonReturnableMinor),
  });
  return {
    lines: lines.map((line, index) => ({ ...line, ...amounts(sold.lines[index]) })),
    totals: {
      ...amounts(sold),
      discountMinor,
      nonReturnableMinor: whole.nonReturnableMinor,
      depositMinor: BigInt(depositMinor),
    },
    listMinor,
  };
}

/** quantity × cost, rounded once. */
export function costOfLine(line: Pick<DraftLine, "quantity" | "unitCostMinor">): bigint {
  const quantity = exactDecimal(line.quantity);
  return roundedQuotient(
    coefficientAt(quantity, quantity.scale) * line.unitCostMinor,
    10n ** BigInt(quantity.scale),
  );
}

function question(
  site: Pick<QuoteSite, "currency" | "jurisdiction">,
  lines: readonly DraftLine[],
  discountMinor: bigint,
) {
  return {
    currency: site.currency,
    jurisdiction: site.jurisdiction,
    pricesIncludeTax: false,
    discountMinor: minorUnits(discountMinor),
    lines: lines.map(({ quantity, unitPriceMinor, discountPct, taxCategory }) => ({
      quantity,
      unitPriceMinor: minorUnits(unitPriceMinor),
      discountPct,
      taxCategory,
    })),
  };
}

function amounts(totals: { netMinor: number; taxMinor: number; grossMinor: number } | undefined): Amounts {
  return {
    netMinor: BigInt(totals?.netMinor ?? 0),
    taxMinor: BigInt(totals?.taxMinor ?? 0),
    grossMinor: BigInt(totals?.grossMinor ?? 0),
  };
}
