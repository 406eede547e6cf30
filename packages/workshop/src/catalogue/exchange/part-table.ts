import type { CsvCell } from "@buildproof/documents";
import type { CurrencyCode } from "@buildproof/units";
import type { CatalogueNames } from "../catalogue-names";
import { figureFaults } from "../components/figure-faults";
import { type ContentOf, type PartKind, partContent } from "../part-content";
import type { Cell, ReadCell, Writing } from "./cell";

/** One column of the table of a part. */
export type Column<Content> = {
  /** What it is called in a file; an amount with its currency. */
  title(currency: CurrencyCode): string;
  /** Where its figure stands in the content, as the schema names it. */
  readonly field: string;
  write(content: Content, currency: CurrencyCode): CsvCell;
  read(cell: string, writing: Writing): ReadCell<unknown>;
  get(content: Content): unknown;
  /** What a new part has where the file does not say; without it the file must. */
  readonly usual?: unknown;
};

/** Content by the fields of its columns. */
export type Flat = Readonly<Record<string, unknown>>;

export type PartTable<Part extends PartKind> = {
  readonly part: Part;
  readonly columns: readonly Column<ContentOf<Part>>[];
  /** The content that the fields make; held against its schema afterwards. */
  content(flat: Flat): unknown;
  /** Further columns for the reader of the file; nothing is read from them. */
  readonly notes?: readonly {
    readonly title: string;
    write(content: ContentOf<Part>, names: CatalogueNames): string;
  }[];
};

export function column<Content, Value>(
  title: string,
  field: string,
  cell: Cell<Value>,
  get: (content: Content) => Value,
  usual?: Value,
): Column<Content> {
  return columnTitled(() => title, field, cell, get, usual);
}

/** As `column`, for amounts: `price_aud`. */
export function columnTitled<Content, Value>(
  title: (currency: CurrencyCode) => string,
  field: string,
  cell: Cell<Value>,
  get: (content: Content) => Value,
  usual?: Value,
): Column<Content> {
  return {
    title,
    field,
    get,
    write: (content, currency) => cell.write(get(content), currency),
    read: (written, writing) => cell.read(written, writing),
    ...(usual === undefined ? {} : { usual }),
  };
}

export type ContentRead<Part extends PartKind> =
  | { readonly ok: true; readonly content: ContentOf<Part> }
  | {
      readonly ok: false;
      readonly problems: readonly { readonly field: string; readonly sentence: string }[];
    };

/** Content held against the schema of its part, each thing wrong with the field it is about. */
export function readContent<Part extends PartKind>(part: Part, content: unknown): ContentRead<Part> {
  const parsed = partContent[part].safeParse(content);
  const problems = parsed.success ? figureProblems(parsed.data) : [];
  if (parsed.success && problems.length > 0) return { ok: false, problems };
  if (parsed.success) return { ok: true, content: parsed.data as ContentOf<Part> }; // Its own schema read it.
  return {
    ok: false,
    problems: parsed.error.issues.map(({ path, message, code, ...issue }) => ({
      field: path.map(String).join(".") || ("keys" in issue ? issue.keys.join(", ") : ""),
      sentence: /[.!?]$/.test(message) ? message : "This is not what the catalogue has here: see the export.",
    })),
  };
}

/** What is wrong with the figures of an item for what it is on the vehicle. */
function figureProblems(content: ContentOf<PartKind>): readonly { field: string; sentence: string }[] {
  if (!("figures" in content)) return [];
  return figureFaults(content.component, content.figures).map(({ sentence }) => ({
    field: "figures",
    sentence,
  }));
}
