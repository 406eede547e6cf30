export { type CsvCell, safeCsv } from "./csv/safe-csv";
export type {
  DynoLogRefusal,
  DynoLogRefusalCode,
  DynoLogResult,
  DynoLogRow,
  DynoLogRunSummary,
} from "./dyno-log/dyno-log-row";
export { type DynoLogOptions, readDynoLog } from "./dyno-log/read-dyno-log";
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
export type { LetterHead } from "./pdf/letter-head";
export type { PlotPoint, PowerBandPlot } from "./pdf/power-band-plot";
export type {
  QuoteDocument,
  QuoteDocumentLine,
  QuoteDocumentPromise,
  QuoteDocumentSection,
} from "./pdf/quote-document";
export { quotePdf } from "./pdf/quote-pdf";
export type { DocumentCustomer, DocumentVehicle } from "./pdf/vehicle-lines";
