import type { CurrencyCode } from "@buildproof/units";
import { type ContentOf, nameOfChange, type PartChange, type PartKind, partKinds } from "../part-content";
import type { ImportProblem, ImportSource } from "./import-problem";
import type { PartTable } from "./part-table";
import { partTables } from "./part-tables";

/** A part that the files add, change or take out. */
export type ReportedChange = {
  readonly code: string;
  readonly name: string;
  /** What differs, column by column, as the files write it; empty for what is added or taken out. */
  readonly columns: readonly { readonly title: string; readonly before: string; readonly after: string }[];
};

type Shown<Each> = { readonly count: number; readonly shown: readonly Each[] };

/** Everything that an import would do, before it does any of it. */
export type ImportReport = {
  readonly sources: readonly ImportSource[];
  readonly problems: Shown<ImportProblem>;
  readonly parts: readonly {
    readonly part: PartKind;
    readonly added: Shown<ReportedChange>;
    readonly changed: Shown<ReportedChange>;
    readonly removed: Shown<ReportedChange>;
  }[];
  readonly same: number;
  /** What the draft is made of, if it is made now. */
  readonly fingerprint: string;
};

/** More than a screen can be looked through; the rest is counted. */
const MOST_SHOWN = 200;

export function reportedParts(changes: readonly PartChange[], currency: CurrencyCode): ImportReport["parts"] {
  return partKinds.flatMap((part) => {
    const own = changes.filter((change) => change.part === part);
    if (own.length === 0) return [];
    const reported = (some: readonly PartChange[]) =>
      shownOf(some, (change) => reportedChange(change, currency));
    return [
      {
        part,
        added: reported(own.filter(({ before }) => before === null)),
        changed: reported(own.filter(({ before, after }) => before !== null && after !== null)),
        removed: reported(own.filter(({ after }) => after === null)),
      },
    ];
  });
}

export function shownOf<Each, Told>(all: readonly Each[], tell: (each: Each) => Told): Shown<Told> {
  return { count: all.length, shown: all.slice(0, MOST_SHOWN).map(tell) };
}

function reportedChange(change: PartChange, currency: CurrencyCode): ReportedChange {
  const { part, code, before, after } = change;
  return {
    code,
    name: nameOfChange(change),
    columns: before && after ? differences(part, before, after, currency) : [],
  };
}

function differences<Part extends PartKind>(
  part: Part,
  before: ContentOf<Part>,
  after: ContentOf<Part>,
  currency: CurrencyCode,
): ReportedChange["columns"] {
  const table: PartTable<Part> = partTables[part];
  return table.columns
    .map((column) => ({
      title: column.title(currency),
      before: String(column.write(before, currency) ?? ""),
      after: String(column.write(after, currency) ?? ""),
    }))
    .filter((each) => each.before !== each.after);
}
