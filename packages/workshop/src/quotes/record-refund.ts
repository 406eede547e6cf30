import { formatMoney, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { dateInZone, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { settleJobsOfQuote } from "../paperwork/settle-job";
import { dateInput } from "./line-input";
import { lockQuote } from "./lock-quote";
import { paymentMethods } from "./payment-methods";
import { moneyInForce, receivedOn } from "./quote-money";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { typedAmount } from "./typed-amount";

/**
 * Records money that went back to the customer, beside what came in. It changes what is held, never what the
 * accepted version asks. What is recorded is never changed.
 */
export const recordRefund = command({
  name: "quotes.record-refund",
  permission: "refunds:record",
  input: z.strictObject({
    quoteId: z.uuid("Open the quote again and refund from there."),
    /** As typed, in the currency's main unit. */
    amount: z.string().trim().min(1, "Enter the amount paid back."),
    method: z.enum(paymentMethods, "Choose how it was paid back."),
    reference: z.string().trim().max(120, "Keep the reference under 120 characters.").default(""),
    paidOn: dateInput,
    reason: z.string().trim().max(500, "Keep the reason under 500 characters."),
  }),
  async run(work, { quoteId, amount, paidOn, reason, ...entry }) {
    const { tx, workshopId, person, now } = work;
    const quote = await tx.quote.findUnique({ where: { id: quoteId } });
    if (!quote) return refuse("quote-not-found");
    await lockQuote(tx, quoteId);
    const site = await quoteSite(tx);
    const amountMinor = typedAmount(amount, site.currency);
    if (amountMinor === null || amountMinor === 0n) return atField("amount", refuse("amount-not-valid"));
    if (paidOn > dateInZone(now, site.timeZone)) return atField("paidOn", refuse("paid-back-in-future"));
    if (reason.length < 10) return atField("reason", refuse("refund-reason"));
    const heldMinor = await receivedOn(tx, quoteId);
    if (amountMinor > heldMinor)
      return atField(
        "amount",
        refuse("more-than-received", { held: formatMoney(minorUnits(heldMinor), site.currency) }),
      );
    const id = newId();
    await tx.payment.create({
      data: {
        id,
        workshopId,
        quoteId,
        kind: "refund",
        amountMinor,
        reason,
        receivedOn: storedDate(paidOn),
        recordedById: person.id,
        recordedAt: now,
        ...entry,
      },
    });
    work.audit({
      entity: "payment",
      entityId: id,
      before: { heldMinor },
      after: { quoteId, kind: "refund", amountMinor, reason, ...entry },
    });
    // A job that was ready may have a balance to pay again.
    await settleJobsOfQuote(work, quoteId);
    const money = await moneyInForce(tx, quoteId);
    return ok({
      paymentId: id,
      amountMinor: amountMinor.toString(),
      heldMinor: (heldMinor - amountMinor).toString(),
      depositMet: money?.depositMet ?? false,
    });
  },
});
