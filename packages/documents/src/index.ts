export { decodedText } from "./csv/decoded-text";
export { type CsvTable, readCsvTable } from "./csv/read-csv-table";
export { type CsvCell, safeCsv } from "./csv/safe-csv";
export type {
  DynoLogRefusal,
  DynoLogRefusalCode,
  DynoLogResult,
  DynoLogRow,
  DynoLogRunSummary,
} from "./dyno-log/dyno-log-row";
export { type DynoLogOptions, readDynoLog } from "./dyno-log/read-dyno-log";
export {
  type EInvoice,
  type EInvoiceKind,
  type EInvoiceLine,
  type EInvoiceParty,
  type EInvoiceTax,
  type EInvoiceTaxCategory,
  eInvoiceKinds,
} from "./e-invoice/e-invoice";
export { eInvoiceProblems } from "./e-invoice/e-invoice-problems";
export { eInvoiceXml } from "./e-invoice/e-invoice-xml";
export { type SaudiInvoice, saudiInvoiceCode } from "./e-invoice/saudi-invoice-code";
export { type AcceptedMediaType, acceptedMediaTypes, sniffFile } from "./file-type/sniff-file";
export type { CurvePoint } from "./pdf/curve-figure";
export { type DocumentFonts, documentFonts } from "./pdf/document-fonts";
export { type DynoCertificateDocument, dynoCertificatePdf } from "./pdf/dyno-certificate-pdf";
export type { DynoFigures, MeasuredState } from "./pdf/dyno-figures";
export type {
  AttachedCertificate,
  FittedPart,
  FollowUp,
  HandOverPackDocument,
  LoggedValue,
} from "./pdf/hand-over-pack-document";
export { handOverPackPdf } from "./pdf/hand-over-pack-pdf";
export type { InvoiceDocument, InvoiceDocumentLine } from "./pdf/invoice-document";
export { invoicePdf } from "./pdf/invoice-pdf";
export type { LetterHead } from "./pdf/letter-head";
export type { PlotPoint, PowerBandPlot } from "./pdf/power-band-plot";
export type {
  QuoteDocument,
  QuoteDocumentLine,
  QuoteDocumentPromise,
  QuoteDocumentSection,
} from "./pdf/quote-document";
export { quotePdf } from "./pdf/quote-pdf";
export { type ReceiptDocument, receiptPdf } from "./pdf/receipt-pdf";
export type { DocumentCustomer, DocumentVehicle } from "./pdf/vehicle-lines";
