import { depositFor, quoteTotals } from "@buildproof/pricing";
import { basisPoints, coefficientAt, exactDecimal, minorUnits, roundedQuotient } from "@buildproof/units";
import type { DraftLine } from "./draft-line";
import type { QuoteSite } from "./quote-site";

type Amounts = { readonly netMinor: bigint; readonly taxMinor: bigint; readonly grossMinor: bigint };

export type PricedLines = {
  readonly lines: readonly (DraftLine & Amounts)[];
  readonly totals: Amounts & {
    /** What the discounts take off the list price, without tax. */
    readonly discountMinor: bigint;
    readonly depositMinor: bigint;
    readonly nonReturnableMinor: bigint;
  };
};

type PriceableLine = Pick<DraftLine, "quantity" | "unitPriceMinor" | "discountPct" | "taxCategory">;

/** Every amount of a version, from its lines. The limits of what may be typed keep each amount far below 2^53. */
export function priceLines(
  site: Pick<QuoteSite, "currency" | "jurisdiction" | "depositSharePct">,
  lines: readonly DraftLine[],
  nonReturnableMinor: bigint,
): PricedLines {
  const sold = quoteTotals(question(site, lines));
  const listed = quoteTotals(
    question(
      site,
      lines.map((line) => ({ ...line, discountPct: "0" })),
    ),
  );
  const { depositMinor } = depositFor({
    totalMinor: sold.grossMinor,
    share: basisPoints(site.depositSharePct * 100),
    nonReturnableCostMinor: minorUnits(nonReturnableMinor),
  });
  return {
    lines: lines.map((line, index) => ({ ...line, ...amounts(sold.lines[index]) })),
    totals: {
      ...amounts(sold),
      discountMinor: BigInt(listed.netMinor) - BigInt(sold.netMinor),
      depositMinor: BigInt(depositMinor),
      nonReturnableMinor,
    },
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

function question(site: Pick<QuoteSite, "currency" | "jurisdiction">, lines: readonly PriceableLine[]) {
  return {
    currency: site.currency,
    jurisdiction: site.jurisdiction,
    pricesIncludeTax: false,
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
