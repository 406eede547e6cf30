import { z } from "zod";
import { newId } from "../core/new-id";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { newRow, openDraft, saveDraft } from "./draft";
import { descriptionInput, discountInput, quantityInput } from "./line-input";
import { refuse } from "./refuse-quote";
import { typedAmount } from "./typed-amount";

const MOST_LINES = 200;

/** Adds a line of its own to a draft: something that is on no list. */
export const addLine = command({
  name: "quotes.add-line",
  permission: "quotes:write",
  input: z.strictObject({
    versionId: z.uuid(),
    revision,
    description: descriptionInput,
    quantity: quantityInput,
    unit: z.enum(["each", "h", "L", "km", "day"], "Choose the unit."),
    /** Of one, without tax, as typed. */
    unitPrice: z.string().trim().min(1, "Enter the price of one, without tax."),
    /** Of one, without tax, as typed; empty when it is not known. */
    unitCost: z.string().trim().default(""),
    discountPct: discountInput.default("0"),
  }),
  async run(work, { description, quantity, unit, unitPrice, unitCost, discountPct, ...seen }) {
    const opened = await openDraft(work, seen, ({ rows }) => [`The draft now has ${rows.length} lines.`]);
    if (!opened.ok) return opened;
    const draft = opened.value;
    if (draft.rows.length >= MOST_LINES) return refuse("too-many-lines");
    const unitPriceMinor = typedAmount(unitPrice, draft.site.currency);
    if (unitPriceMinor === null) return refuse("price-not-valid");
    // What it costs us is asked of those who may see costs.
    const isCostGiven = unitCost !== "" && mayDo("quote-margin:read", work.person.roles);
    const unitCostMinor = isCostGiven ? typedAmount(unitCost, draft.site.currency) : 0n;
    if (unitCostMinor === null) return refuse("price-not-valid");
    const row = newRow(draft, {
      kind: "extra",
      // Its own name across versions, so that a later version can say that it changed.
      code: `extra-${newId()}`,
      description,
      quantity,
      unit,
      unitPriceMinor,
      unitCostMinor,
      discountPct,
      taxCategory: "S",
    });
    const saved = await saveDraft(work, draft, [...draft.rows, row]);
    if (!saved.ok) return saved;
    work.audit({ entity: "quote-version", entityId: draft.id, after: { line: row } });
    return ok({ ...saved.value, lineId: row.id });
  },
});
