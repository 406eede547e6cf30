import type { ContentOf, PartKind } from "../part-content";
import { partCode } from "../write-part";
import type { Writing } from "./cell";
import { type Flat, type PartTable, readContent } from "./part-table";
import { columnTitle, partTables } from "./part-tables";
import type { KnownColumn } from "./table-header";

/** Where the columns that a file has stand in its rows. */
export type TableShape<Part extends PartKind> = {
  readonly part: Part;
  readonly width: number;
  readonly codeAt: number;
  readonly columns: readonly (KnownColumn & { readonly at: number })[];
  readonly writing: Writing;
};

type CellProblem = { readonly column: string | null; readonly sentence: string };

type ReadRow =
  | { readonly ok: true; readonly code: string; readonly content: ContentOf<PartKind> }
  | { readonly ok: false; readonly problems: readonly CellProblem[] };

/** Reads one row over what the catalogue has of it, or over what a new part usually is. */
export function readRow<Part extends PartKind>(
  shape: TableShape<Part>,
  cells: readonly string[],
  known: ReadonlyMap<string, ContentOf<Part>>,
  newPosition: number,
): ReadRow {
  const { part, width, columns, writing } = shape;
  if (cells.length > width)
    return wrong([
      {
        column: null,
        sentence: `The row has ${cells.length} cells where the header has ${width}: put what holds a delimiter in quotation marks.`,
      },
    ]);
  const code = partCode.safeParse(cells[shape.codeAt] ?? "");
  if (!code.success)
    return wrong([{ column: "code", sentence: code.error.issues[0]?.message ?? "Give it a code." }]);
  const before = known.get(code.data);
  const flat = { ...(before ? flatOf(part, before) : usualOf(columns, newPosition)) };
  const unreadable = overlay(flat, columns, cells, writing);
  if (unreadable.length > 0) return wrong(unreadable);
  const read = readContent(part, partTables[part].content(flat));
  if (read.ok) return { ok: true, code: code.data, content: read.content };
  return wrong(
    read.problems.map(({ field, sentence }) => ({
      column: columnTitle(part, field, writing.currency),
      sentence: isMissing(flat, columns, field)
        ? "A new one needs this: add the column and write it in."
        : sentence,
    })),
  );
}

const wrong = (problems: readonly CellProblem[]): ReadRow => ({ ok: false, problems });

/** Puts what the cells say in place of what was; answers what could not be read. */
function overlay(
  flat: Record<string, unknown>,
  columns: TableShape<PartKind>["columns"],
  cells: readonly string[],
  writing: Writing,
): readonly CellProblem[] {
  return columns.flatMap(({ title, field, read, usual, at }) => {
    if (at === -1) return [];
    const cell = cells[at] ?? "";
    const isEmpty = cell.trim() === "";
    // An empty cell of a figure, a yes or a no stands for what it usually is.
    if (isEmpty && (typeof usual === "number" || typeof usual === "boolean")) {
      flat[field] = usual;
      return [];
    }
    const result = read(cell, writing);
    if (!result.ok)
      return [{ column: title, sentence: isEmpty ? "This is empty: write it in." : result.because }];
    flat[field] = result.value;
    return [];
  });
}

function flatOf<Part extends PartKind>(part: Part, content: ContentOf<Part>): Flat {
  const table: PartTable<Part> = partTables[part];
  return Object.fromEntries(table.columns.map(({ field, get }) => [field, get(content)]));
}

function usualOf(columns: readonly KnownColumn[], position: number): Flat {
  return Object.fromEntries(
    columns.map(({ field, usual }) => [field, field === "position" ? position : usual]),
  );
}

function isMissing(flat: Flat, columns: readonly KnownColumn[], field: string): boolean {
  return flat[field] === undefined && columns.some((column) => column.field === field);
}
