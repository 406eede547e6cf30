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
export type { LetterHead } from "./pdf/letter-head";
export type { PlotPoint, PowerBandPlot } from "./pdf/power-band-plot";
export type {
  QuoteDocument,
  QuoteDocumentLine,
  QuoteDocumentPromise,
  QuoteDocumentSection,
} from "./pdf/quote-document";
export type { DocumentCustomer, DocumentVehicle } from "./pdf/vehicle-lines";
