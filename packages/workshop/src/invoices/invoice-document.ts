import type { InvoiceDocument } from "@buildproof/documents";
import { formatMoney, minorUnits } from "@buildproof/units";
import { addressLines, letterHead } from "../core/letter-head";
import { isoDateOf } from "../core/site-date";
import { taxRegistration } from "../core/tax-registration";
import { en } from "../messages/en";
import { type InvoiceLine, invoiceContent } from "./invoice-content";
import type { InvoiceRow } from "./invoice-row";

/** An invoice or credit note as the paper that the customer keeps. */
export function invoiceDocument(row: InvoiceRow): InvoiceDocument {
  const content = invoiceContent.parse(row.content);
  const { seller, buyer, currency, taxName, jurisdiction, credits } = content;
  const isInvoice = row.kind === "invoice";
  return {
    kind: isInvoice ? "invoice" : "credit-note",
    number: String(row.number),
    workshop: letterHead({ ...seller, jurisdiction }),
    customer: {
      name: buyer.name,
      address: addressLines(buyer.address),
      email: buyer.email,
      phone: buyer.phone,
      taxNumber: taxRegistration(jurisdiction, buyer.taxNumber),
    },
    vehicle: content.vehicle,
    issuedOn: isoDateOf(row.issuedOn),
    issuedAt: row.issuedAt.toISOString(),
    dueOn: isoDateOf(row.dueOn),
    currency,
    taxName,
    buyerReference: content.buyerReference,
    basis: en.invoiceBasis({ quote: content.quoteNumber, version: content.versionNo }),
    ...(credits
      ? { credits: { number: String(credits.number), issuedOn: credits.issuedOn, reason: row.reason } }
      : {}),
    lines: content.lines.map((line) => documentLine(line)),
    netMinor: Number(row.netMinor),
    taxes: content.taxes.map(({ ratePct, netMinor, taxMinor }) => ({
      words: `${taxName} ${ratePct} % on ${formatMoney(minorUnits(netMinor), currency)}`,
      taxMinor,
    })),
    grossMinor: Number(row.grossMinor),
    prepaidMinor: Number(row.prepaidMinor),
    payment: isInvoice && row.grossMinor > row.prepaidMinor ? [en.invoicePayment(row.number)] : [],
  };
}

function documentLine(line: InvoiceLine): InvoiceDocument["lines"][number] {
  const { description, quantity, unit, discountPct, taxCategory, ratePct, netMinor, grossMinor } = line;
  return {
    description,
    ...(discountPct === "0" ? {} : { detail: en.lessDiscount(discountPct) }),
    quantity: unit === "each" ? quantity : `${quantity} ${unit}`,
    netMinor,
    tax: taxCategory === "S" ? `${ratePct} %` : en.taxFree[taxCategory],
    grossMinor,
  };
}
