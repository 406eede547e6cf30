import { z } from "zod";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { creditLeft } from "./credit-left";
import { invoiceContent } from "./invoice-content";

/** The invoices and credit notes of a quote, newest first, and whether another may be issued. */
export const invoicesOfQuote = query({
  name: "invoices.of-quote",
  permission: "invoices:read",
  input: z.strictObject({ quoteId: z.uuid() }),
  async run({ tx }, { quoteId }) {
    const rows = await tx.invoice.findMany({ where: { quoteId }, orderBy: { number: "desc" } });
    const invoices = [];
    for (const row of rows) {
      const { leftMinor, creditedPositions } = await creditLeft(tx, row);
      const { lines, buyer } = invoiceContent.parse(row.content);
      invoices.push({
        id: row.id,
        number: row.number,
        kind: row.kind,
        issuedOn: isoDateOf(row.issuedOn),
        dueOn: isoDateOf(row.dueOn),
        grossMinor: Number(row.grossMinor),
        currency: row.currency,
        reason: row.reason,
        creditsNumber: rows.find(({ id }) => id === row.creditsId)?.number ?? null,
        isForBusiness: buyer.taxNumber !== "",
        leftMinor: row.kind === "invoice" ? leftMinor : 0,
        lines: lines.map(({ position, description, grossMinor }) => ({
          position,
          description,
          grossMinor,
          isCredited: creditedPositions.has(position),
        })),
      });
    }
    const accepted = await tx.quoteVersion.findFirst({ where: { quoteId, status: "accepted" } });
    const stands = invoices.some(({ leftMinor }) => leftMinor > 0);
    const canIssue = accepted !== null && accepted.grossMinor > 0n && !stands;
    return ok({ invoices, canIssue });
  },
});
