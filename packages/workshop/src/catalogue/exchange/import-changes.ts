import { createHash } from "node:crypto";
import { isDeepStrictEqual } from "node:util";
import { type CatalogueState, withChanges } from "../catalogue-state";
import { dangling } from "../dangling";
import type { PartChange, PartKind } from "../part-content";
import type { ImportProblem, ReadEntry } from "./import-problem";
import type { ImportSetting } from "./import-setting";
import { columnTitle } from "./part-tables";
import { type Reference, referencesOf } from "./references";

/** What becomes of parts that the files do not name. */
export type Absent = "stay" | "go";

export type ImportChanges = {
  readonly changes: readonly PartChange[];
  readonly problems: readonly ImportProblem[];
  /** How many entries say what is so already. */
  readonly same: number;
};

/** What the entries of files change in the catalogue, and what speaks against it. Nothing is changed yet. */
export function importChanges(
  entries: readonly ReadEntry[],
  parts: readonly PartKind[],
  absent: Absent,
  setting: ImportSetting & { readonly models: ReadonlySet<string> },
): ImportChanges {
  const { state, models } = setting;
  const doubled = doubledEntries(entries);
  const all = entries.map(
    ({ part, code, content }) =>
      ({ part, code, before: state.parts[part].get(code) ?? null, after: content }) as PartChange, // Its part chose its content.
  );
  const changes = all.filter(({ before, after }) => !isDeepStrictEqual(before, after));
  const named = new Set(entries.map(({ part, code }) => `${part} ${code}`));
  const gone = absent === "go" ? parts.flatMap((part) => removals(state, part, named)) : [];
  const together = [...changes, ...gone];
  const after = withChanges(state, together);
  const pointless = entries.flatMap((entry) => pointsNowhere(entry, after, setting));
  return {
    changes: together,
    problems: [...doubled, ...pointless, ...(pointless.length > 0 ? [] : leftBehind(state, after, models))],
    same: all.length - changes.length,
  };
}

/** Tells one set of changes from another, so that what is drafted is what was looked at. */
export function fingerprintOf(changes: readonly PartChange[]): string {
  return createHash("sha256").update(JSON.stringify(changes)).digest("hex");
}

function removals(state: CatalogueState, part: PartKind, named: ReadonlySet<string>): readonly PartChange[] {
  return [...state.parts[part]]
    .filter(([code]) => !named.has(`${part} ${code}`))
    .map(([code, before]) => ({ part, code, before, after: null }) as PartChange); // Read from the part itself.
}

function doubledEntries(entries: readonly ReadEntry[]): readonly ImportProblem[] {
  const first = new Map<string, ReadEntry>();
  return entries.flatMap((entry) => {
    const key = `${entry.part} ${entry.code}`;
    const before = first.get(key);
    if (!before) {
      first.set(key, entry);
      return [];
    }
    const where = before.file === entry.file ? `row ${before.row}` : `row ${before.row} of ${before.file}`;
    const sentence = `${entry.code} stands in ${where} already: keep one of the two.`;
    return [{ file: entry.file, row: entry.row, column: "code", sentence }];
  });
}

function pointsNowhere(
  { part, code, content, file, row }: ReadEntry,
  after: CatalogueState,
  { models, currency }: ImportSetting & { readonly models: ReadonlySet<string> },
): readonly ImportProblem[] {
  const known: Record<Reference["kind"], { has(code: string): boolean }> = {
    item: after.parts.item,
    operation: after.parts.operation,
    access: after.parts.access,
    model: models,
  };
  return referencesOf(part, content)
    .filter((reference) => !known[reference.kind].has(reference.code))
    .map((reference) => ({
      file,
      row,
      column: columnTitle(part, reference.field, currency),
      sentence: `${code} names the ${words[reference.kind]} ${reference.code}, which is not there: add it, or take it out here.`,
    }));
}

const words: Record<Reference["kind"], string> = {
  item: "item",
  operation: "operation",
  access: "access work",
  model: "vehicle model",
};

/** What is not in the files but points at what would go. */
function leftBehind(
  before: CatalogueState,
  after: CatalogueState,
  models: ReadonlySet<string>,
): readonly ImportProblem[] {
  const already = new Set(dangling(before, models));
  return dangling(after, models)
    .filter((point) => !already.has(point))
    .map((point) => ({
      file: "",
      row: null,
      column: null,
      sentence: `${point} It is not in the file and would be left so: let what it names stay, or bring both in.`,
    }));
}
