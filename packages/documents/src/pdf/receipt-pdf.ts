import type { CurrencyCode } from "@buildproof/units";
import { drawAddressBlock, drawVehicleLine } from "./address-block";
import type { DocumentFonts } from "./document-fonts";
import { dateInWords, moneyInWords } from "./document-words";
import { drawLetterHead, type LetterHead } from "./letter-head";
import { renderSheet } from "./render-sheet";
import type { SheetWriter } from "./sheet-writer";
import { writeTotals } from "./totals-block";
import type { DocumentCustomer, DocumentVehicle } from "./vehicle-lines";

/** What a receipt says of one payment. Dates are `YYYY-MM-DD` in the workshop's zone. */
export interface ReceiptDocument {
  readonly number: string;
  readonly workshop: LetterHead;
  readonly customer: DocumentCustomer;
  readonly vehicle: DocumentVehicle;
  readonly receivedOn: string;
  /** The instant it was recorded (ISO 8601 with offset or Z); it dates the file itself. */
  readonly recordedAt: string;
  readonly currency: CurrencyCode;
  readonly amountMinor: number;
  /** What it was for and how it came, a sentence each. */
  readonly sentences: readonly string[];
  /** Of the quote, after this payment. */
  readonly receivedMinor: number;
  readonly remainsMinor: number;
}

/** The receipt of one payment. The same data gives the same bytes. */
export function receiptPdf(receipt: ReceiptDocument, fonts?: DocumentFonts): Promise<Uint8Array> {
  const name = `Receipt ${receipt.number}`;
  const properties = {
    title: `${name} for ${receipt.customer.name}`,
    author: receipt.workshop.name,
    running: `${receipt.workshop.name} · ${name}`,
    madeAt: receipt.recordedAt,
  };
  return renderSheet(properties, (sheet) => writeReceipt(sheet, receipt, name), fonts);
}

function writeReceipt(sheet: SheetWriter, receipt: ReceiptDocument, name: string): void {
  const money = (minor: number) => moneyInWords(minor, receipt.currency);
  drawLetterHead(sheet, receipt.workshop);
  drawAddressBlock(sheet, receipt.customer, [
    ["Receipt", receipt.number],
    ["Received on", dateInWords(receipt.receivedOn)],
  ]);
  sheet.heading(name, 1);
  drawVehicleLine(sheet, receipt.vehicle);
  sheet.paragraph(`Received with thanks: ${money(receipt.amountMinor)}.`, { face: "bold", size: 14 }, 4);
  for (const sentence of receipt.sentences) sheet.paragraph(sentence, {}, 2);
  writeTotals(sheet, [
    { word: "Received so far", amount: money(receipt.receivedMinor) },
    { word: "Remains to be paid", amount: money(receipt.remainsMinor), strong: true },
  ]);
}
