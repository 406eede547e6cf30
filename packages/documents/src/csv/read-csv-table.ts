import Papa from "papaparse";
import { decodedText, type TextEncodingName } from "./decoded-text";

export type CsvTable = {
  readonly encoding: TextEncodingName;
  readonly delimiter: "," | ";" | "\t";
  readonly header: readonly string[];
  /** Rows that hold anything, each with its number as a spreadsheet shows it. */
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[];
};

export type CsvTableRefusal = {
  readonly code: "not-text" | "empty" | "too-many-rows" | "unreadable";
  readonly row: number | null;
  readonly sentence: string;
};

/**
 * Reads a small CSV file whole: header and rows, whatever a spreadsheet makes of encoding, delimiter and line ends.
 *
 * @source RFC 4180, clauses 2.1 to 2.7; the delimiter is the one that the header has most of.
 */
export function readCsvTable(bytes: Uint8Array, mostRows: number): CsvTable | CsvTableRefusal {
  const decoded = decodedText(bytes);
  if (!decoded)
    return refused("not-text", null, "This is no text file: save the sheet as CSV and choose that file.");
  const { text, skipped } = withoutSeparatorLine(decoded.text);
  const delimiter = delimiterOf(text);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, preview: mostRows + 2 });
  const broken = errors.find(({ type }) => type === "Quotes");
  if (broken) {
    const row = (broken.row ?? 0) + 1 + skipped;
    const sentence = `From row ${row} on a quotation mark is opened and not closed: mend it or export again.`;
    return refused("unreadable", row, sentence);
  }
  const [header, ...records] = data;
  if (!header || header.every(isBlank))
    return refused(
      "empty",
      null,
      "The file has no header line: choose a file whose first row names its columns.",
    );
  const rows = records
    .map((cells, index) => ({ row: index + 2 + skipped, cells }))
    .filter(({ cells }) => !cells.every(isBlank));
  if (records.length > mostRows && rows.length > mostRows)
    return refused(
      "too-many-rows",
      null,
      `The file has more than ${mostRows} rows: split it and import the pieces.`,
    );
  return { encoding: decoded.encoding, delimiter, header: header.map((cell) => cell.trim()), rows };
}

function refused(code: CsvTableRefusal["code"], row: number | null, sentence: string): CsvTableRefusal {
  return { code, row, sentence };
}

const isBlank = (cell: string) => cell.trim() === "";

/** A first line such as `sep=;`, which some spreadsheets write and read to name the delimiter. */
function withoutSeparatorLine(text: string): { readonly text: string; readonly skipped: number } {
  const line = /^sep=.(\r\n|\n|\r)/i.exec(text);
  return line ? { text: text.slice(line[0].length), skipped: 1 } : { text, skipped: 0 };
}

function delimiterOf(text: string): CsvTable["delimiter"] {
  const line = /^[^\r\n]*/.exec(text)?.[0] ?? "";
  const count = (delimiter: string) => line.split(delimiter).length;
  const candidates = [",", ";", "\t"] as const;
  return candidates.reduce((best, each) => (count(each) > count(best) ? each : best));
}
