import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft, saveDraft } from "./draft";
import type { DraftRow } from "./draft-line";
import { quotableBuild } from "./quotable-build";
import { refuse } from "./refuse-quote";
import { contentOf } from "./write-draft";

/**
 * Prices a draft anew from its build as it is now. Lines of its own stay; a line that stays keeps the words and
 * the discount it was given, at today's price and the build's quantity.
 */
export const takeBuildAgain = command({
  name: "quotes.take-build-again",
  permission: "quotes:write",
  input: z.strictObject({ versionId: z.uuid(), revision }),
  async run(work, seen) {
    const opened = await openDraft(work, seen, ({ rows }) => [`The draft now has ${rows.length} lines.`]);
    if (!opened.ok) return opened;
    const draft = opened.value;
    const build = await quotableBuild(work.tx, draft.buildId, work.now);
    if (!build) return refuse("build-not-found");
    if (build.selection.items.length === 0) return refuse("build-empty");
    const keyOf = ({ kind, code }: Pick<DraftRow, "kind" | "code">) => `${kind} ${code}`;
    const standing = new Map(draft.rows.map((row) => [keyOf(row), row]));
    let free = Math.max(-1, ...draft.rows.map(({ position }) => position)) + 1;
    const taken = build.lines.map((line): DraftRow => {
      const before = standing.get(keyOf(line));
      if (!before) return { ...line, id: newId(), position: free++ };
      const { id, position, description, discountPct } = before;
      return { ...line, id, position, description, discountPct };
    });
    // A JSON column is emptied by hand: in data, null would mean a JSON null.
    if (!build.promise)
      await work.tx.$executeRaw`update quote_version set promise = null where id = ${draft.id}::uuid`;
    if (!build.forecast)
      await work.tx.$executeRaw`update quote_version set forecast = null where id = ${draft.id}::uuid`;
    const own = draft.rows.filter(({ kind }) => kind === "extra");
    const saved = await saveDraft(work, draft, [...taken, ...own], {
      ...contentOf(build),
      nonReturnableMinor: build.nonReturnableMinor,
    });
    if (!saved.ok) return saved;
    work.audit({
      entity: "quote-version",
      entityId: draft.id,
      before: { selection: draft.selection },
      after: { selection: build.selection, forecast: build.forecast },
    });
    return ok(saved.value);
  },
});
