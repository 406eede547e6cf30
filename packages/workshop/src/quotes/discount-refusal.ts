import { compareDecimals, exactDecimal } from "@buildproof/units";
import { mayDo } from "../core/permissions";
import type { PersonWork } from "../core/use-case";
import type { DraftRow } from "./draft-line";
import { type PricedLines, priceLines } from "./price-lines";
import type { QuoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";

type Sold = { readonly rows: readonly DraftRow[]; readonly discountMinor: bigint };

/**
 * Refuses a discount beyond the site's limit, on one line or on the whole, by somebody who may not give it. What
 * the owner granted earlier stays, and may be lowered by anybody.
 */
export function discountRefusal(
  work: Pick<PersonWork, "person">,
  site: QuoteSite,
  before: Sold,
  after: Sold,
) {
  const limitPct = site.discountLimitPct;
  if (mayDo("quotes:discount", work.person.roles)) return null;
  const earlier = new Map(before.rows.map((row) => [row.id, row]));
  const isLineOver = after.rows.some(({ id, discountPct }) => {
    const granted = earlier.get(id)?.discountPct ?? "0";
    return isMore(discountPct, limitPct) && isMore(discountPct, granted);
  });
  const was = takenOff(priceSold(site, before));
  const is = takenOff(priceSold(site, after));
  const isWholeOver =
    is.offMinor * 100n > BigInt(limitPct) * is.listMinor &&
    is.offMinor * was.listMinor > was.offMinor * is.listMinor;
  return isLineOver || isWholeOver ? refuse("discount-over-limit", { limitPct }) : null;
}

function isMore(one: string, other: string | number): boolean {
  return compareDecimals(exactDecimal(one), exactDecimal(other)) > 0;
}

function priceSold(site: QuoteSite, { rows, discountMinor }: Sold): PricedLines {
  return priceLines(site, rows, { discountMinor, nonReturnableMinor: 0n });
}

/** Off the list price in all, without tax. */
function takenOff({ listMinor, totals }: PricedLines) {
  return { listMinor, offMinor: listMinor - totals.netMinor };
}
