import type { QuoteStatus } from "@buildproof/workshop";
import { dayText } from "./day-text";

type Dated = { readonly status: QuoteStatus; readonly validUntil: string };

/** Where a version stands, in a word or two. */
export const statusNames: Readonly<Record<QuoteStatus, string>> = {
  draft: "draft",
  issued: "issued",
  accepted: "accepted",
  declined: "declined",
  lapsed: "lapsed",
  superseded: "superseded",
};

/** Where a version stands, with the day that matters. */
export function statusInWords({ status, validUntil }: Dated): string {
  if (status === "issued") return `issued, open until ${dayText(validUntil)}`;
  if (status === "lapsed") return `lapsed after ${dayText(validUntil)}`;
  return statusNames[status];
}
