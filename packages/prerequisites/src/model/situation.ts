import { type ExactDecimal, exactDecimal, ZERO } from "@buildproof/units";
import type { Facts } from "./model";

type FactReader = (name: string) => ExactDecimal;

/** What is selected, on what vehicle. */
export type Situation = {
  readonly selected: ReadonlySet<string>;
  readonly factOf: FactReader;
};

const readers = new WeakMap<Facts, FactReader>();

/** Facts are a value, as a model is: read once per object. */
export function situation(selected: Iterable<string>, facts: Facts): Situation {
  const factOf = readers.get(facts) ?? readerOf(facts);
  readers.set(facts, factOf);
  return { selected: new Set(selected), factOf };
}

export function withItems(from: Situation, added: Iterable<string>): Situation {
  return { ...from, selected: new Set([...from.selected, ...added]) };
}

function readerOf(facts: Facts): FactReader {
  const known = new Map(Object.entries(facts).map(([name, value]) => [name, exactDecimal(value)]));
  return (name) => known.get(name) ?? ZERO;
}
