import { formatMoney, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { dateInZone, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { settleJobsOfQuote } from "../paperwork/settle-job";
import { dateInput } from "./line-input";
import { lockQuote } from "./lock-quote";
import { paymentMethods } from "./payment-methods";
import { moneyInForce, quoteMoney } from "./quote-money";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { typedAmount } from "./typed-amount";

/** Records money that came in on an accepted quote. What is recorded is never changed. */
export const recordPayment = command({
  name: "quotes.record-payment",
  permission: "deposits:record",
  input: z.strictObject({
    quoteId: z.uuid(),
    kind: z.enum(["deposit", "balance"], "Say whether it is the deposit or the balance."),
    /** Of a deposit: when the tax falls due depends on it (GST Act 1999 Div 99). */
    heldAs: z.enum(["security", "part"], "Say how the deposit is held.").default("security"),
    /** As typed, in the currency's main unit. */
    amount: z.string().trim().min(1, "Enter the amount received."),
    method: z.enum(paymentMethods, "Choose how it was paid."),
    reference: z.string().trim().max(120, "Keep the reference under 120 characters.").default(""),
    receivedOn: dateInput,
  }),
  async run(work, { quoteId, amount, receivedOn: day, heldAs, ...rest }) {
    const { tx, workshopId } = work;
    const entry = { ...rest, heldAs: rest.kind === "deposit" ? heldAs : "" };
    const quote = await tx.quote.findUnique({ where: { id: quoteId } });
    if (!quote) return refuse("quote-not-found");
    await lockQuote(tx, quoteId);
    const site = await quoteSite(tx);
    const amountMinor = typedAmount(amount, site.currency);
    if (amountMinor === null || amountMinor === 0n) return refuse("amount-not-valid");
    if (day > dateInZone(work.now, site.timeZone)) return refuse("received-in-future");
    const accepted = await tx.quoteVersion.findFirst({ where: { quoteId, status: "accepted" } });
    if (!accepted) return refuse("nothing-accepted");
    const { outstandingMinor: remains } = await quoteMoney(tx, quoteId, accepted);
    if (amountMinor > remains)
      return refuse("more-than-due", { remains: formatMoney(minorUnits(remains), site.currency) });
    const id = newId();
    await tx.payment.create({
      data: {
        id,
        workshopId,
        quoteId,
        amountMinor,
        receivedOn: storedDate(day),
        recordedById: work.person.id,
        recordedAt: work.now,
        ...entry,
      },
    });
    work.audit({ entity: "payment", entityId: id, after: { quoteId, amountMinor, ...entry } });
    // A job that was done and unpaid is ready once its balance is here.
    await settleJobsOfQuote(work, quoteId);
    const money = await moneyInForce(tx, quoteId);
    return ok({
      paymentId: id,
      amountMinor: amountMinor.toString(),
      depositMet: money?.depositMet ?? false,
    });
  },
});
