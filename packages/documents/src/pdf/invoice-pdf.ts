import { drawAddressBlock, drawVehicleLine } from "./address-block";
import type { DocumentFonts } from "./document-fonts";
import { dateInWords, moneyInWords } from "./document-words";
import type { InvoiceDocument } from "./invoice-document";
import { drawLetterHead } from "./letter-head";
import { renderSheet } from "./render-sheet";
import { ruledTable } from "./ruled-table";
import type { SheetWriter } from "./sheet-writer";
import { type TotalRow, writeTotals } from "./totals-block";

/**
 * A tax invoice or a credit note. The same data gives the same bytes.
 *
 * @source GST Act 1999 (Cth) s 29-70(1): that it is a tax invoice, supplier with ABN, issue date, what was
 *         supplied, price, tax and its extent, the recipient's identity; UAE Cabinet Decision 52 of 2017 art. 59:
 *         rate and tax of each line too.
 */
export function invoicePdf(invoice: InvoiceDocument, fonts?: DocumentFonts): Promise<Uint8Array> {
  const name = nameOf(invoice);
  const properties = {
    title: `${name} for ${invoice.customer.name}`,
    author: invoice.workshop.name,
    running: `${invoice.workshop.name} · ${name}`,
    madeAt: invoice.issuedAt,
  };
  return renderSheet(properties, (sheet) => writeInvoice(sheet, invoice, name), fonts);
}

const nameOf = ({ kind, number }: InvoiceDocument) =>
  kind === "invoice" ? `Tax invoice ${number}` : `Credit note ${number}`;

function writeInvoice(sheet: SheetWriter, invoice: InvoiceDocument, name: string): void {
  const { customer, credits } = invoice;
  drawLetterHead(sheet, invoice.workshop);
  const address = [...(customer.address ?? []), ...(customer.taxNumber ? [customer.taxNumber] : [])];
  drawAddressBlock(sheet, { ...customer, address }, particularsOf(invoice));
  sheet.heading(name, 1);
  drawVehicleLine(sheet, invoice.vehicle);
  sheet.paragraph(invoice.basis);
  if (credits)
    sheet.paragraph(
      `It takes back from tax invoice ${credits.number} of ${dateInWords(credits.issuedOn)}. ${credits.reason}`,
      { face: "bold" },
    );
  writeLines(sheet, invoice);
  if (invoice.payment.length === 0) return;
  sheet.heading("How to pay", 2);
  for (const sentence of invoice.payment) sheet.paragraph(sentence, {}, 2);
}

function particularsOf(invoice: InvoiceDocument) {
  const isInvoice = invoice.kind === "invoice";
  return [
    [isInvoice ? "Tax invoice" : "Credit note", invoice.number],
    ["Date", dateInWords(invoice.issuedOn)],
    ...(isInvoice ? [["Due", dateInWords(invoice.dueOn)]] : []),
    ...(invoice.buyerReference === "" ? [] : [["Your order", invoice.buyerReference]]),
  ].map(([word = "", value = ""]) => [word, value] as const);
}

function writeLines(sheet: SheetWriter, invoice: InvoiceDocument): void {
  const money = (minor: number) => moneyInWords(minor, invoice.currency);
  ruledTable(
    sheet,
    [
      { heading: "Item or work", share: 46 },
      { heading: "Quantity", share: 12, align: "right" },
      { heading: "Without tax", share: 16, align: "right" },
      { heading: invoice.taxName, share: 10, align: "right" },
      { heading: `Incl. ${invoice.taxName}`, share: 16, align: "right" },
    ],
    invoice.lines.map(({ description, detail, quantity, netMinor, tax, grossMinor }) => ({
      cells: [
        detail === undefined ? description : { text: description, detail },
        quantity,
        money(netMinor),
        tax,
        money(grossMinor),
      ],
    })),
  );
  writeTotals(sheet, totalsOf(invoice, money));
}

function totalsOf(invoice: InvoiceDocument, money: (minor: number) => string): readonly TotalRow[] {
  const total = `Total ${invoice.kind === "invoice" ? "" : "credited "}incl. ${invoice.taxName}`;
  return [
    { word: "Total without tax", amount: money(invoice.netMinor) },
    ...invoice.taxes.map(({ words, taxMinor }) => ({ word: words, amount: money(taxMinor) })),
    { word: total, amount: money(invoice.grossMinor), strong: true },
    ...(invoice.kind === "invoice"
      ? [
          { word: "Received", amount: money(invoice.prepaidMinor) },
          { word: "To pay", amount: money(invoice.grossMinor - invoice.prepaidMinor), strong: true },
        ]
      : []),
  ];
}
