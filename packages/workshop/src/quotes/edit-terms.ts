import { formatMoney, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { dayInWords } from "./day-in-words";
import { openDraft, saveDraft } from "./draft";
import { dateInput } from "./line-input";
import { refuse } from "./refuse-quote";
import { typedAmount } from "./typed-amount";
import { validUntilRefusal } from "./valid-until";

/** Changes until when a draft will hold, what is given off the whole, and the note to the customer. */
export const editTerms = command({
  name: "quotes.edit-terms",
  permission: "quotes:write",
  input: z.strictObject({
    versionId: z.uuid(),
    revision,
    validUntil: dateInput,
    note: z.string().trim().max(2_000, "Keep the note under 2,000 characters."),
    /** Off the whole quote, without tax, as typed; empty for none. */
    discount: z.string().trim().max(20, "Enter the discount in dollars and cents."),
  }),
  async run(work, { validUntil, note, discount, ...seen }) {
    const opened = await openDraft(work, seen, (draft) => [
      `Valid until now: ${dayInWords(draft.validUntil)}`,
      `Discount off the whole now: ${formatMoney(minorUnits(draft.discountMinor), draft.site.currency)}`,
      draft.note ? `Note now: ${draft.note}` : "There is no note now.",
    ]);
    if (!opened.ok) return opened;
    const draft = opened.value;
    const refused = validUntilRefusal(validUntil, work.now, draft.site.timeZone);
    if (refused) return refuse(refused);
    const discountMinor = discount === "" ? 0n : typedAmount(discount, draft.site.currency);
    if (discountMinor === null) return refuse("discount-not-valid");
    const saved = await saveDraft(work, draft, draft.rows, {
      validUntil: storedDate(validUntil),
      note,
      discountMinor,
    });
    if (!saved.ok) return saved;
    work.audit({
      entity: "quote-version",
      entityId: draft.id,
      before: { validUntil: draft.validUntil, note: draft.note, discountMinor: draft.discountMinor },
      after: { validUntil, note, discountMinor },
    });
    return ok(saved.value);
  },
});
