import type { Transaction } from "@buildproof/database";
import { formatMoney, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { atField } from "../core/at-field";
import { asJson } from "../core/audit";
import { newId } from "../core/new-id";
import { nextNumber } from "../core/next-number";
import { ok, type Result } from "../core/result";
import { dateInZone, isoDateOf, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { settleJobsOfQuote } from "../paperwork/settle-job";
import { lockQuote } from "../quotes/lock-quote";
import { typedAmount } from "../quotes/typed-amount";
import { creditByAmount } from "./credit-by-amount";
import { creditLeft } from "./credit-left";
import { type InvoiceContent, type InvoiceLine, invoiceContent } from "./invoice-content";
import { refuseInvoice } from "./refuse-invoice";
import { sumOfLines, taxesOfLines } from "./taxes-of-lines";

/** Takes an invoice back, whole lines of it or an amount: what the customer owes goes down by as much. */
export const creditInvoice = command({
  name: "invoices.credit",
  permission: "invoices:credit",
  input: z.strictObject({
    invoiceId: z.uuid("Open the quote again and credit from there."),
    /** Positions of lines taken back whole. */
    positions: z.array(z.number().int()).max(200),
    /** Or an amount off the whole, tax included, as typed; empty: none. */
    amount: z.string().trim(),
    reason: z.string().trim().max(500, "Keep the reason under 500 characters."),
  }),
  async run(work, { invoiceId, positions, amount, reason }) {
    const { tx, workshopId, person, now, audit } = work;
    const invoice = await tx.invoice.findUnique({ where: { id: invoiceId } });
    if (!invoice) return refuseInvoice("invoice-not-found");
    if (invoice.kind !== "invoice") return refuseInvoice("not-an-invoice");
    if (reason.length < 10) return atField("reason", refuseInvoice("credit-reason"));
    await lockQuote(tx, invoice.quoteId);
    const content = invoiceContent.parse(invoice.content);
    const chosen = amount
      ? await linesOfAmount(tx, invoice, content, amount)
      : await linesOfPositions(tx, invoice, content, positions);
    if (!chosen.ok) return chosen;
    const lines = chosen.value;
    const sum = sumOfLines(lines);
    const today = dateInZone(now, content.timeZone);
    const id = newId();
    const number = await nextNumber(tx, workshopId, "invoice");
    await tx.invoice.create({
      data: {
        id,
        workshopId,
        number,
        kind: "creditNote",
        quoteId: invoice.quoteId,
        versionId: invoice.versionId,
        creditsId: invoice.id,
        reason,
        issuedOn: storedDate(today),
        dueOn: storedDate(today),
        currency: invoice.currency,
        netMinor: BigInt(sum.netMinor),
        taxMinor: BigInt(sum.taxMinor),
        grossMinor: BigInt(sum.grossMinor),
        content: asJson({
          ...content,
          lines,
          taxes: taxesOfLines(lines),
          credits: { number: invoice.number, issuedOn: isoDateOf(invoice.issuedOn) },
        }),
        issuedById: person.id,
        issuedAt: now,
      },
    });
    audit({ entity: "invoice", entityId: id, after: { number, credits: invoice.number, ...sum, reason } });
    // A job that waited for its balance may be ready now.
    await settleJobsOfQuote(work, invoice.quoteId);
    return ok({ invoiceId: id, number });
  },
});

type Row = { readonly id: string; readonly grossMinor: bigint };

async function linesOfPositions(
  tx: Transaction,
  invoice: Row,
  { lines, currency }: InvoiceContent,
  positions: readonly number[],
): Promise<Result<readonly InvoiceLine[]>> {
  const chosen = lines.filter(({ position }) => positions.includes(position));
  if (chosen.length === 0) return refuseInvoice("nothing-chosen");
  const { leftMinor, creditedPositions } = await creditLeft(tx, invoice);
  const again = chosen.find(({ position }) => creditedPositions.has(position));
  if (again) return refuseInvoice("line-credited", { description: again.description });
  // Lines that were part of an amount credited before are worth less than they were.
  if (sumOfLines(chosen).grossMinor > leftMinor)
    return refuseInvoice("more-than-invoiced", { left: formatMoney(minorUnits(leftMinor), currency) });
  return ok(chosen);
}

async function linesOfAmount(
  tx: Transaction,
  invoice: Row,
  content: InvoiceContent,
  amount: string,
): Promise<Result<readonly InvoiceLine[]>> {
  const amountMinor = typedAmount(amount, content.currency);
  if (amountMinor === null || amountMinor === 0n) return atField("amount", refuseInvoice("amount-not-valid"));
  const { leftMinor } = await creditLeft(tx, invoice);
  if (amountMinor > BigInt(leftMinor))
    return atField(
      "amount",
      refuseInvoice("more-than-invoiced", { left: formatMoney(minorUnits(leftMinor), content.currency) }),
    );
  return ok(creditByAmount(content, Number(amountMinor), "Reduction of the price"));
}
