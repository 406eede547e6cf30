import Papa from "papaparse";

export type CsvCell = string | number | bigint | null;

/**
 * Text cells that a spreadsheet would run as a formula: they get a leading apostrophe. Quoting alone does not
 * stop evaluation. Numbers stay numbers, so −5 is not guarded.
 *
 * @source OWASP, CSV Injection; OWASP ASVS 1.2.10 (adds NUL). Full-width forms and line feed from memory.
 */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these control characters are what is guarded against.
const formulaStart = /^[=+\-@\t\r\n\u0000＝＋－＠]/;

const byteOrderMark = "\uFEFF";

/**
 * A CSV file that opens safely in a spreadsheet.
 *
 * @source RFC 4180, clauses 2.1 to 2.7: CRLF line ends, header, fields quoted where needed, quotes doubled.
 */
export function safeCsv(
  header: readonly string[],
  rows: Iterable<readonly CsvCell[]>,
  options: { readonly byteOrderMark?: boolean } = {},
): string {
  const data = [header, ...rows].map((row) => row.map(cellText));
  const text = `${Papa.unparse(data, { newline: "\r\n" })}\r\n`;
  return options.byteOrderMark === true ? byteOrderMark + text : text;
}

function cellText(cell: CsvCell): string {
  if (cell === null) return "";
  if (typeof cell === "bigint") return String(cell);
  if (typeof cell === "number") {
    if (!Number.isFinite(cell)) throw new RangeError("A CSV cell cannot hold a number that is not finite.");
    return String(cell);
  }
  return formulaStart.test(cell) ? `'${cell}` : cell;
}
