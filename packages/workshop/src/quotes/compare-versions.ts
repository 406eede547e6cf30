import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { readForecastRecord } from "../engineering/forecast-record";
import { forecastDifference } from "../engineering/forecast-record-difference";
import type { LineRow } from "./line-row";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { type ComparedLine, changeInWords, type LineChange, versionDifference } from "./version-difference";

/** What changed between two versions of one quote, in words and figures. */
export const compareVersions = query({
  name: "quotes.compare-versions",
  permission: "quotes:read",
  input: z.strictObject({
    quoteId: z.uuid(),
    from: z.number().int().min(1),
    to: z.number().int().min(1),
  }),
  async run({ tx }, { quoteId, from, to }) {
    const quote = await tx.quote.findUnique({
      where: { id: quoteId },
      include: {
        versions: {
          where: { versionNo: { in: [from, to] } },
          include: { lines: { orderBy: { position: "asc" } } },
        },
      },
    });
    if (!quote) return refuse("quote-not-found");
    const before = quote.versions.find(({ versionNo }) => versionNo === from);
    const after = quote.versions.find(({ versionNo }) => versionNo === to);
    if (!before || !after) return refuse("version-not-found");
    const { currency, taxName } = await quoteSite(tx);
    const changes = versionDifference(before.lines.map(comparedLine), after.lines.map(comparedLine));
    return ok({
      quoteId,
      number: quote.number,
      currency,
      from,
      to,
      changes: [
        ...changes.map((change) => ({
          id: idOf(change),
          words: changeInWords(change),
          beforeMinor: change.kind === "added" ? null : change.before.grossMinor,
          afterMinor: change.kind === "removed" ? null : change.after.grossMinor,
        })),
        ...wholeDiscount(before.discountMinor, after.discountMinor, taxName),
      ],
      forecast: forecastDifference(readForecastRecord(before.forecast), readForecastRecord(after.forecast)),
      totals: { beforeMinor: Number(before.grossMinor), afterMinor: Number(after.grossMinor) },
    });
  },
});

function comparedLine(row: LineRow): ComparedLine {
  const { kind, code, description, unit } = row;
  return {
    kind,
    code,
    description,
    unit,
    quantity: row.quantity.toString(),
    discountPct: row.discountPct.toString(),
    unitPriceMinor: Number(row.unitPriceMinor),
    grossMinor: Number(row.grossMinor),
  };
}

function wholeDiscount(before: bigint, after: bigint, taxName: string) {
  if (before === after) return [];
  const words = `Discount off the whole, without ${taxName}`;
  return [{ id: "discount", words, beforeMinor: 0 - Number(before), afterMinor: 0 - Number(after) }];
}

function idOf(change: LineChange): string {
  const { kind, code } = change.kind === "removed" ? change.before : change.after;
  return `${kind} ${code}`;
}
