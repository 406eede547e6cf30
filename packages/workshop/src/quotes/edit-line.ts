import { formatMoney, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft, saveDraft } from "./draft";
import type { DraftRow } from "./draft-line";
import { descriptionInput, discountInput, quantityInput } from "./line-input";
import type { QuoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";

/** Changes what one line of a draft says, how many, and what is given off. */
export const editLine = command({
  name: "quotes.edit-line",
  permission: "quotes:write",
  input: z.strictObject({
    versionId: z.uuid(),
    revision,
    lineId: z.uuid(),
    description: descriptionInput,
    quantity: quantityInput,
    discountPct: discountInput,
  }),
  async run(work, { lineId, description, quantity, discountPct, ...seen }) {
    const opened = await openDraft(work, seen, ({ rows, site }) => {
      const now = rows.find(({ id }) => id === lineId);
      return now ? standingLine(now, site) : ["The line was removed."];
    });
    if (!opened.ok) return opened;
    const draft = opened.value;
    const before = draft.rows.find(({ id }) => id === lineId);
    if (!before) return refuse("line-not-found");
    if (before.unit === "each" && before.kind !== "extra" && !isWhole(quantity))
      return refuse("pieces-are-whole");
    const after = { ...before, description, quantity, discountPct };
    const saved = await saveDraft(
      work,
      draft,
      draft.rows.map((row) => (row.id === lineId ? after : row)),
    );
    if (!saved.ok) return saved;
    work.audit({
      entity: "quote-version",
      entityId: draft.id,
      before: { line: before },
      after: { line: after },
    });
    return ok(saved.value);
  },
});

function isWhole(quantity: string): boolean {
  return /^\d+(\.0+)?$/.test(quantity);
}

function standingLine(row: DraftRow, site: QuoteSite): readonly string[] {
  const price = formatMoney(minorUnits(row.unitPriceMinor), site.currency);
  return [
    `Description now: ${row.description}`,
    `Quantity now: ${row.quantity} ${row.unit} at ${price} without ${site.taxName}`,
    `Discount now: ${row.discountPct} %`,
  ];
}
