import { type EInvoice, type EInvoiceLine, eInvoiceProblems, eInvoiceXml } from "@buildproof/documents";
import { decimalAmount, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { type InvoiceContent, type InvoiceLine, invoiceContent } from "./invoice-content";
import type { InvoiceRow } from "./invoice-row";
import { refuseInvoice } from "./refuse-invoice";

/** An invoice or credit note as an electronic one, for a business customer in Australia. */
export const invoiceXml = query({
  name: "invoices.xml",
  permission: "invoices:read",
  input: z.strictObject({ invoiceId: z.uuid() }),
  async run({ tx }, { invoiceId }) {
    const row = await tx.invoice.findUnique({ where: { id: invoiceId } });
    if (!row) return refuseInvoice("invoice-not-found");
    const content = invoiceContent.parse(row.content);
    const points =
      content.jurisdiction === "AU"
        ? eInvoiceProblems(eInvoiceOf(row, content))
        : ["Electronic invoices are written for Australia so far; send the PDF."];
    if (points.length > 0) return refuseInvoice("not-electronic", { points });
    return ok({ xml: eInvoiceXml(eInvoiceOf(row, content)), fileName: `invoice-${row.number}.xml` });
  },
});

function eInvoiceOf(row: InvoiceRow, content: InvoiceContent): EInvoice {
  const { currency, credits } = content;
  return {
    kind: row.kind === "invoice" ? "invoice" : "credit-note",
    number: String(row.number),
    issuedOn: isoDateOf(row.issuedOn),
    dueOn: isoDateOf(row.dueOn),
    currency,
    // Without an order number the quote is what the buyer knows it by.
    buyerReference: content.buyerReference || `Quote ${content.quoteNumber}`,
    note: row.reason,
    credits: credits ? { number: String(credits.number), issuedOn: credits.issuedOn } : null,
    seller: partyOf(content.seller),
    buyer: partyOf(content.buyer),
    lines: content.lines.map((line) => lineOf(line, content)),
    taxes: content.taxes.map(({ taxCategory, ratePct, netMinor, taxMinor }) => ({
      taxCategory,
      ratePct,
      netMinor: minorUnits(netMinor),
      taxMinor: minorUnits(taxMinor),
    })),
    prepaidMinor: minorUnits(row.prepaidMinor),
    paymentTerms: "",
    account: null,
  };
}

/** The address as it is kept, in one line: the standard asks for no more than the country. */
function partyOf({ name, taxNumber, address, email }: InvoiceContent["seller"]): EInvoice["seller"] {
  const street = address.split(/\s*\n\s*/).join(", ");
  return { name, abn: taxNumber, street, city: "", postcode: "", region: "", country: "AU", email };
}

function lineOf(line: InvoiceLine, { currency }: InvoiceContent): EInvoiceLine {
  const { description, code, quantity, unit, unitPriceMinor, netMinor, taxCategory, ratePct } = line;
  return {
    name: description,
    itemCode: code,
    quantity,
    unit: unit === "h" ? "HUR" : unit === "each" ? "C62" : "LS",
    unitPrice: decimalAmount(minorUnits(unitPriceMinor), currency),
    netMinor: minorUnits(netMinor),
    taxCategory,
    ratePct,
  };
}
