import { type ExactDecimal, exactDecimal, ZERO } from "@buildproof/units";
import type { Facts } from "./model";

/** What is selected, on what vehicle. */
export type Situation = {
  readonly selected: ReadonlySet<string>;
  readonly factOf: (name: string) => ExactDecimal;
};

export function situation(selected: Iterable<string>, facts: Facts): Situation {
  const known = new Map(Object.entries(facts).map(([name, value]) => [name, exactDecimal(value)]));
  return { selected: new Set(selected), factOf: (name) => known.get(name) ?? ZERO };
}

export function withItems(from: Situation, added: Iterable<string>): Situation {
  return { ...from, selected: new Set([...from.selected, ...added]) };
}
