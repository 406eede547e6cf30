import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft, saveDraft } from "./draft";
import { refuse } from "./refuse-quote";

/** Takes a line off a draft. */
export const removeLine = command({
  name: "quotes.remove-line",
  permission: "quotes:write",
  input: z.strictObject({ versionId: z.uuid(), revision, lineId: z.uuid() }),
  async run(work, { lineId, ...seen }) {
    const opened = await openDraft(work, seen, ({ rows }) => {
      const now = rows.find(({ id }) => id === lineId);
      return [
        now
          ? `The line is still there: ${now.description}, ${now.quantity} ${now.unit}`
          : "The line is gone already.",
      ];
    });
    if (!opened.ok) return opened;
    const draft = opened.value;
    const line = draft.rows.find(({ id }) => id === lineId);
    if (!line) return refuse("line-not-found");
    const saved = await saveDraft(
      work,
      draft,
      draft.rows.filter(({ id }) => id !== lineId),
    );
    if (!saved.ok) return saved;
    work.audit({ entity: "quote-version", entityId: draft.id, before: { line } });
    return ok(saved.value);
  },
});
