import { type CsvTable, readCsvTable } from "@buildproof/documents";
import type { ContentOf, PartKind } from "../part-content";
import type { ImportProblem, ReadEntry, ReadFile } from "./import-problem";
import { type ImportSetting, MOST_ROWS } from "./import-setting";
import { readRow, type TableShape } from "./read-row";
import { headerProblems, knownColumns, partOfHeader } from "./table-header";

type NamedFile = { readonly name: string; readonly bytes: Uint8Array };

const delimiterWords = { ",": "comma", ";": "semicolon", "\t": "tab" } as const;

/** Reads one part of the catalogue from a table; columns that are not there leave what they are about as it was. */
export function readTable({ name, bytes }: NamedFile, setting: ImportSetting): ReadFile {
  const refused = (problems: readonly Omit<ImportProblem, "file">[]): ReadFile => ({
    source: null,
    entries: [],
    problems: problems.map((problem) => ({ file: name, ...problem })),
  });
  const table = readCsvTable(bytes, MOST_ROWS);
  if ("code" in table) return refused([{ row: table.row, column: null, sentence: table.sentence }]);
  const header = table.header.map((title) => title.toLowerCase());
  const part = setting.part ?? partOfHeader(header, setting.currency);
  if (!part)
    return refused([
      {
        row: 1,
        column: null,
        sentence: "Its columns do not tell what it holds: say below what it is, and check again.",
      },
    ]);
  const wrongColumns = headerProblems(header, part, setting.currency);
  if (wrongColumns.length > 0) return refused(wrongColumns.map((problem) => ({ row: 1, ...problem })));
  const read = readRows({ ...table, header }, part, setting);
  return {
    source: {
      file: name,
      form: "CSV",
      encoding: table.encoding,
      delimiter: delimiterWords[table.delimiter],
      parts: [part],
      rows: table.rows.length,
    },
    entries: read.entries.map((entry) => ({ ...entry, file: name })),
    problems: read.problems.map((problem) => ({ file: name, ...problem })),
  };
}

function readRows<Part extends PartKind>(table: CsvTable, part: Part, { state, currency }: ImportSetting) {
  const entries: Omit<ReadEntry, "file">[] = [];
  const problems: Omit<ImportProblem, "file">[] = [];
  const known: ReadonlyMap<string, ContentOf<Part>> = state.parts[part];
  const shape: TableShape<Part> = {
    part,
    width: table.header.length,
    codeAt: table.header.indexOf("code"),
    columns: knownColumns(part, currency).map((column) => ({
      ...column,
      at: table.header.indexOf(column.title),
    })),
    writing: { currency, decimalComma: table.delimiter !== "," },
  };
  // What is new stands after what is there, in the order of the file.
  const last = Math.max(0, ...[...known.values()].map((each) => ("position" in each ? each.position : 0)));
  for (const { row, cells } of table.rows) {
    const read = readRow(shape, cells, known, last + row);
    if (read.ok) entries.push({ part, code: read.code, content: read.content, row });
    else problems.push(...read.problems.map((problem) => ({ row, ...problem })));
  }
  return { entries, problems };
}
