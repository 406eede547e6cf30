import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft } from "./draft";
import { refuse } from "./refuse-quote";

/** Throws a draft away that follows an issued version. The first draft of a quote stays: it is the quote. */
export const discardDraft = command({
  name: "quotes.discard-draft",
  permission: "quotes:write",
  input: z.strictObject({ versionId: z.uuid(), revision }),
  async run(work, seen) {
    const opened = await openDraft(work, seen, ({ rows }) => [`The draft now has ${rows.length} lines.`]);
    if (!opened.ok) return opened;
    const draft = opened.value;
    const others = await work.tx.quoteVersion.count({
      where: { quoteId: draft.quoteId, id: { not: draft.id } },
    });
    if (others === 0) return refuse("only-version");
    await work.tx.quoteLine.deleteMany({ where: { versionId: draft.id } });
    await work.tx.quoteVersion.delete({ where: { id: draft.id } });
    work.audit({
      entity: "quote-version",
      entityId: draft.id,
      before: { versionNo: draft.versionNo, lines: draft.rows },
    });
    return ok({ quoteId: draft.quoteId });
  },
});
