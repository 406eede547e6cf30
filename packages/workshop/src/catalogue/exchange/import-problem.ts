import type { ContentOf, PartKind } from "../part-content";

/** Something wrong with a file, at its place, in one sentence that says what to do. */
export type ImportProblem = {
  readonly file: string;
  /** The row of the sheet, or the number of the entry in its list; null where it is about the whole file. */
  readonly row: number | null;
  readonly column: string | null;
  readonly sentence: string;
};

/** One part of the catalogue as a file would have it. */
export type ReadEntry = {
  readonly part: PartKind;
  readonly code: string;
  readonly content: ContentOf<PartKind>;
  readonly file: string;
  readonly row: number;
};

/** What a file was recognised as. */
export type ImportSource = {
  readonly file: string;
  readonly form: "CSV" | "JSON";
  readonly encoding: string;
  readonly delimiter: string | null;
  readonly parts: readonly PartKind[];
  readonly rows: number;
};

export type ReadFile = {
  readonly source: ImportSource | null;
  readonly entries: readonly ReadEntry[];
  readonly problems: readonly ImportProblem[];
};
