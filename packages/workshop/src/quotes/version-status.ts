import { dayInZone, isoDateOf } from "../core/site-date";

export const quoteStatuses = ["draft", "issued", "accepted", "declined", "lapsed", "superseded"] as const;
export type QuoteStatus = (typeof quoteStatuses)[number];

type Dated = { readonly status: QuoteStatus; readonly validUntil: Date };

/** An issued version lapses at 24:00 of its last day in the site's zone, whether or not anybody touched it since. */
export function statusNow(version: Dated, now: Date, timeZone: string): QuoteStatus {
  const isOver = now >= dayInZone(isoDateOf(version.validUntil), timeZone).end;
  return version.status === "issued" && isOver ? "lapsed" : version.status;
}
