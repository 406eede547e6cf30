import type { CurrencyCode } from "@buildproof/units";
import { type PartKind, partKinds } from "../part-content";
import type { Column } from "./part-table";
import { partTables } from "./part-tables";

export type KnownColumn = Pick<Column<never>, "field" | "read" | "usual"> & { readonly title: string };

/** The columns of a part as a file of this workshop names them. */
export function knownColumns(part: PartKind, currency: CurrencyCode): readonly KnownColumn[] {
  return partTables[part].columns.map(({ title, field, read, ...rest }) => ({
    title: title(currency),
    field,
    read,
    ...("usual" in rest ? { usual: rest.usual } : {}),
  }));
}

/** The part whose table has most of these columns; null where two have as many, or none has any. */
export function partOfHeader(header: readonly string[], currency: CurrencyCode): PartKind | null {
  const counts = partKinds
    .map((part) => {
      const titles = knownColumns(part, currency).map(({ title }) => title);
      return {
        part,
        count: header.filter((title) => titles.includes(title) || otherUnit(title, titles)).length,
      };
    })
    .sort((one, other) => other.count - one.count);
  const [first, second] = counts;
  if (!first || first.count === 0 || first.count === second?.count) return null;
  return first.part;
}

/** What is wrong with the header of a table, column by column. */
export function headerProblems(
  header: readonly string[],
  part: PartKind,
  currency: CurrencyCode,
): readonly { readonly column: string; readonly sentence: string }[] {
  const known = ["code", ...knownColumns(part, currency).map(({ title }) => title), ...noteTitles(part)];
  const problems = header.flatMap((column, index) => {
    if (column === "") return [];
    if (header.indexOf(column) !== index)
      return [{ column, sentence: "This column stands in the file twice: leave one of them out." }];
    return known.includes(column) ? [] : [{ column, sentence: strangerSentence(column, known) }];
  });
  if (header.includes("code")) return problems;
  return [{ column: "code", sentence: "There is no column code, which says what each row is." }, ...problems];
}

function noteTitles(part: PartKind): readonly string[] {
  return (partTables[part].notes ?? []).map(({ title }) => title);
}

function strangerSentence(column: string, known: readonly string[]): string {
  const meant = otherUnit(column, known);
  if (meant) return `The catalogue has ${meant}: convert the figures to that unit and name the column so.`;
  return `The catalogue has no such column: leave it out, or name it as one of ${known.join(", ")}.`;
}

/** The column that says the same in another unit or currency: mass_kg for mass_g. */
function otherUnit(column: string, known: readonly string[]): string | undefined {
  const stem = column.slice(0, Math.max(0, column.lastIndexOf("_")));
  return known.find((title) => title === stem || (stem !== "" && title.startsWith(`${stem}_`)));
}
