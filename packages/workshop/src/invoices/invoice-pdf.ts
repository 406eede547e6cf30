import { invoicePdf as drawInvoice } from "@buildproof/documents";
import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { invoiceDocument } from "./invoice-document";
import { refuseInvoice } from "./refuse-invoice";

/** An invoice or credit note as a PDF, the same bytes every time. */
export const invoicePdf = query({
  name: "invoices.pdf",
  permission: "invoices:read",
  input: z.strictObject({ invoiceId: z.uuid() }),
  async run({ tx }, { invoiceId }) {
    const row = await tx.invoice.findUnique({ where: { id: invoiceId } });
    if (!row) return refuseInvoice("invoice-not-found");
    return ok({
      bytes: await drawInvoice(invoiceDocument(row)),
      fileName: `${row.kind === "invoice" ? "invoice" : "credit-note"}-${row.number}.pdf`,
    });
  },
});
