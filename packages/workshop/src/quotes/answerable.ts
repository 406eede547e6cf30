import { ok, type Result } from "../core/result";
import { isoDateOf } from "../core/site-date";
import type { Work } from "../core/use-case";
import { dayInWords } from "./day-in-words";
import { lockQuote } from "./lock-quote";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { type QuoteStatus, statusNow } from "./version-status";

/** The version that a customer may now accept or decline, held until the transaction ends; or why not. */
export async function answerable(work: Work, shownVersionId: string) {
  const { tx, actor } = work;
  if (actor.kind !== "customer") throw new Error("a customer's use case ran without a link");
  if (actor.versionId !== shownVersionId) return refuse("link-for-other-version");
  const named = await tx.quoteVersion.findUnique({ where: { id: actor.versionId } });
  if (!named) return refuse("version-not-found");
  await lockQuote(tx, named.quoteId);
  const version = await tx.quoteVersion.findUniqueOrThrow({
    where: { id: named.id },
    include: { quote: { include: { versions: true } } },
  });
  const { timeZone } = await quoteSite(tx);
  const status = statusNow(version, work.now, timeZone);
  return status === "issued" ? ok(version) : whyNot(version, status);
}

type Version = {
  readonly versionNo: number;
  readonly validUntil: Date;
  readonly quote: {
    readonly versions: readonly { readonly versionNo: number; readonly status: QuoteStatus }[];
  };
};

function whyNot(version: Version, status: Exclude<QuoteStatus, "issued">): Result<never> {
  const { versionNo, quote } = version;
  switch (status) {
    case "accepted":
      return refuse("already-accepted");
    case "declined":
      return refuse("already-declined");
    case "lapsed":
      return refuse("version-lapsed", { on: dayInWords(isoDateOf(version.validUntil)) });
    case "superseded": {
      const out = quote.versions.filter((other) => other.status !== "draft");
      const newest = Math.max(...out.map((other) => other.versionNo));
      return refuse("version-superseded", { versionNo, by: newest > versionNo ? newest : null });
    }
    case "draft":
      return refuse("not-open");
  }
}
