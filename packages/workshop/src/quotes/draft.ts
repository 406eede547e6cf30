import { isDeepStrictEqual } from "node:util";
import type { Transaction } from "@buildproof/database";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { isoDateOf } from "../core/site-date";
import type { PersonWork } from "../core/use-case";
import { discountRefusal } from "./discount-refusal";
import type { DraftLine, DraftRow } from "./draft-line";
import { lastEditor } from "./last-editor";
import { asDraftLine } from "./line-row";
import { type Amounts, priceLines, type WholeTerms } from "./price-lines";
import { type QuoteSite, quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { statusNow } from "./version-status";

export type Draft = {
  readonly id: string;
  readonly quoteId: string;
  readonly buildId: string;
  readonly versionNo: number;
  readonly revision: number;
  readonly validUntil: string;
  readonly note: string;
  readonly discountMinor: bigint;
  readonly nonReturnableMinor: bigint;
  readonly selection: unknown;
  readonly rows: readonly DraftRow[];
  /** The amounts as they are stored, by line. */
  readonly amounts: ReadonlyMap<string, Amounts>;
  readonly site: QuoteSite;
};

type Seen = { readonly versionId: string; readonly revision: number };

/**
 * Opens a draft to change it. Somebody who saw an older state is told who changed it and, by `standing`, what
 * stands now where they wanted to write.
 */
export async function openDraft(
  work: PersonWork,
  seen: Seen,
  standing: (draft: Draft) => readonly string[],
): Promise<Result<Draft>> {
  const site = await quoteSite(work.tx);
  const version = await work.tx.quoteVersion.findUnique({
    where: { id: seen.versionId },
    include: { quote: true, lines: { orderBy: { position: "asc" } } },
  });
  if (!version) return refuse("version-not-found");
  const { versionNo } = version;
  if (version.status !== "draft")
    return refuse("not-a-draft", { versionNo, status: statusNow(version, work.now, site.timeZone) });
  const draft: Draft = {
    id: version.id,
    quoteId: version.quoteId,
    buildId: version.quote.buildId,
    versionNo,
    revision: version.revision,
    validUntil: isoDateOf(version.validUntil),
    note: version.note,
    discountMinor: version.discountMinor,
    nonReturnableMinor: version.nonReturnableMinor,
    selection: version.selection,
    rows: version.lines.map((line) => ({ id: line.id, position: line.position, ...asDraftLine(line) })),
    amounts: new Map(version.lines.map((line) => [line.id, amountsOf(line)])),
    site,
  };
  if (version.revision === seen.revision) return ok(draft);
  return refuse("stale", { by: await lastEditor(work.tx, version.id), points: standing(draft) });
}

type VersionData = NonNullable<Parameters<Transaction["quoteVersion"]["update"]>[0]["data"]>;

/** Writes the lines and whatever else changed; every amount is worked out anew, and discounts are held to their limit. */
export async function saveDraft(
  work: PersonWork,
  draft: Draft,
  rows: readonly DraftRow[],
  other: Omit<VersionData, keyof WholeTerms> & Partial<WholeTerms> = {},
): Promise<Result<{ readonly versionId: string; readonly revision: number }>> {
  const { tx, workshopId } = work;
  const { discountMinor = draft.discountMinor, nonReturnableMinor = draft.nonReturnableMinor } = other;
  const refused = discountRefusal(work, draft.site, draft, { rows, discountMinor });
  if (refused) return refused;
  const priced = priceLines(draft.site, rows, { discountMinor, nonReturnableMinor });
  const { count } = await tx.quoteVersion.updateMany({
    where: { id: draft.id, revision: draft.revision, status: "draft" },
    data: { ...other, ...priced.totals, revision: { increment: 1 } },
  });
  if (count === 0) return refuse("stale", { by: await lastEditor(tx, draft.id), points: [] });
  const kept = new Set(rows.map(({ id }) => id));
  const gone = draft.rows.filter(({ id }) => !kept.has(id));
  if (gone.length > 0) await tx.quoteLine.deleteMany({ where: { id: { in: gone.map(({ id }) => id) } } });
  for (const [index, row] of rows.entries()) {
    const amounts = amountsOf(priced.lines[index]);
    const { id, ...data } = row;
    if (!draft.amounts.has(id))
      await tx.quoteLine.create({ data: { id, workshopId, versionId: draft.id, ...data, ...amounts } });
    else if (isChanged(draft, row, amounts))
      await tx.quoteLine.update({ where: { id }, data: { ...data, ...amounts } });
  }
  return ok({ versionId: draft.id, revision: draft.revision + 1 });
}

/** A line that is not on the draft yet, after all others. */
export function newRow(draft: Pick<Draft, "rows">, line: DraftLine): DraftRow {
  return { ...line, id: newId(), position: nextPosition(draft.rows) };
}

export function nextPosition(rows: readonly DraftRow[]): number {
  return Math.max(-1, ...rows.map(({ position }) => position)) + 1;
}

/** Most lines stay as they are when one is changed, and are left alone. */
function isChanged(draft: Draft, row: DraftRow, amounts: Amounts): boolean {
  const before = draft.rows.find(({ id }) => id === row.id);
  return !isDeepStrictEqual({ ...before, ...draft.amounts.get(row.id) }, { ...row, ...amounts });
}

function amountsOf(line: Amounts | undefined): Amounts {
  if (!line) throw new Error("a line was left without its amounts");
  const { netMinor, taxMinor, grossMinor } = line;
  return { netMinor, taxMinor, grossMinor };
}
