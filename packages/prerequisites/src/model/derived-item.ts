import { ImpossibleInputError } from "@buildproof/units";
import type { Item } from "./model";

/**
 * What nobody chooses: it is there exactly when what it comes from is. Access work that any of several operations
 * needs; an operation that any of several items needs; the duty point that a blower, a pulley and a fuel
 * make together, to be named in the demand and supply of capacities.
 */
export type DerivedItem = Item & {
  /** Items or other derived items. */
  readonly from: { readonly any: readonly string[] } | { readonly all: readonly string[] };
};

/** The derived items that a selection brings along, in their own order. */
export function derivedFrom(derived: readonly DerivedItem[], selected: Iterable<string>): readonly string[] {
  if (derived.length === 0) return [];
  const there = new Set(selected);
  const found = new Set<string>();
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const { id, from } of derived) {
      if (!found.has(id) && follows(from, there)) found.add(id);
      if (found.has(id)) there.add(id);
    }
  }
  return derived.map(({ id }) => id).filter((id) => found.has(id));
}

function follows(from: DerivedItem["from"], there: ReadonlySet<string>): boolean {
  return "any" in from ? from.any.some((id) => there.has(id)) : from.all.every((id) => there.has(id));
}

export function sourcesOf({ from }: DerivedItem): readonly string[] {
  return "any" in from ? from.any : from.all;
}

/** @throws ImpossibleInputError for an unknown id, or a derived item that comes from itself. */
export function checkDerived(itemIds: Iterable<string>, derived: readonly DerivedItem[]): void {
  const byId = new Map(derived.map((each) => [each.id, each]));
  const items = new Set(itemIds);
  const closed = new Set<string>();
  const close = (each: DerivedItem, path: readonly string[]): void => {
    if (closed.has(each.id)) return;
    if (path.includes(each.id)) throw circle([...path.slice(path.indexOf(each.id)), each.id]);
    for (const id of sourcesOf(each)) {
      const source = byId.get(id);
      if (source) close(source, [...path, each.id]);
      else if (!items.has(id)) throw unknown(id, `derived[${derived.indexOf(each)}].from`);
    }
    closed.add(each.id);
  };
  for (const each of derived) close(each, []);
}

function unknown(id: string, path: string): ImpossibleInputError {
  return new ImpossibleInputError(
    "unknown-id",
    `There is no item "${id}": add it to items or correct the id.`,
    path,
  );
}

function circle(ids: readonly string[]): ImpossibleInputError {
  return new ImpossibleInputError(
    "cycle",
    `What is derived comes from itself (${ids.join(" from ")}): remove one of these.`,
    "derived",
  );
}
