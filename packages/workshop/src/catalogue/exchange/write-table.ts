import { safeCsv } from "@buildproof/documents";
import type { CurrencyCode } from "@buildproof/units";
import { catalogueNames } from "../catalogue-names";
import type { CatalogueState } from "../catalogue-state";
import type { PartKind } from "../part-content";
import { guard } from "./cell";
import type { PartTable } from "./part-table";
import { partTables } from "./part-tables";

/** One part of the catalogue as a CSV file that a spreadsheet opens safely and that is read back as it was. */
export function writeTable<Part extends PartKind>(
  part: Part,
  state: CatalogueState,
  currency: CurrencyCode,
): string {
  const table: PartTable<Part> = partTables[part];
  const notes = table.notes ?? [];
  const names = catalogueNames(state, new Map());
  const header = [
    "code",
    ...table.columns.map(({ title }) => title(currency)),
    ...notes.map(({ title }) => title),
  ];
  const rows = [...state.parts[part]].map(([code, content]) => [
    code,
    ...table.columns.map((column) => column.write(content, currency)),
    ...notes.map((note) => guard(note.write(content, names))),
  ]);
  return safeCsv(header, rows, { byteOrderMark: true });
}
