import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findings-in";
import type { PreparedModel } from "../model/prepare";
import { type Situation, withItems } from "../model/situation";
import { subsets } from "./subsets";

/** What a search may do: which findings count, and which items it may add, cheapest first. */
export type Search = {
  readonly ready: PreparedModel;
  /** Findings that are left as they are. */
  readonly tolerated: ReadonlySet<string>;
  /** Addable items, cheapest first. */
  readonly candidates: readonly string[];
  /** How many selections may still be looked at; counted down while closing. */
  readonly effort: { left: number };
};

/** An item has rarely more than a handful of needs; a longer chain is a fault in the catalogue. */
const MOST_ADDED = 12;
const LARGEST_STEP = 2;

export function openFindings({ ready, tolerated }: Search, situation: Situation): readonly Finding[] {
  return findingsIn(ready, situation).filter(({ rule }) => !tolerated.has(rule));
}

/** Whether one rule, or group, is broken; the others are not looked at. */
export function isBroken({ ready }: Search, rule: string, situation: Situation): boolean {
  return ready.constraints.some(({ id, findingIn }) => id === rule && findingIn(situation) !== null);
}

/** Addable items that can clear one rule, cheapest first. */
export function candidatesFor(
  { ready, candidates }: Search,
  rule: string,
  situation: Situation,
): readonly string[] {
  const helpers = new Set(ready.constraints.find(({ id }) => id === rule)?.helpers);
  return candidates.filter((id) => helpers.has(id) && !situation.selected.has(id));
}

/**
 * Adds, cheapest first, what the selection needs until nothing is open, and backs out of a choice that
 * cannot be completed. Returns null when it finds no way with at most twelve added items.
 */
export function closeSelection(search: Search, from: Situation): Situation | null {
  return close(search, from, MOST_ADDED);
}

function close(search: Search, from: Situation, mayAdd: number): Situation | null {
  const [first] = openFindings(search, from);
  if (!first) return from;
  const candidates = candidatesFor(search, first.rule, from);
  for (let size = 1; size <= Math.min(LARGEST_STEP, mayAdd); size += 1) {
    for (const added of subsets(candidates, size)) {
      search.effort.left -= 1;
      if (search.effort.left < 0) return null;
      const next = withItems(from, added);
      if (isBroken(search, first.rule, next)) continue;
      const closed = close(search, next, mayAdd - size);
      if (closed) return closed;
    }
  }
  return null;
}
