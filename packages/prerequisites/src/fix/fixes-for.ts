import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findings-in";
import { checkChoice } from "../model/check-ids";
import type { Facts, Model } from "../model/model";
import { prepare } from "../model/prepare";
import { type Situation, situation, withItems } from "../model/situation";
import { candidatesFor, closeSelection, isBroken, openFindings, type Search } from "./close-selection";
import type { Fix } from "./fix";
import { fixOf } from "./fix-of";
import { subsets } from "./subsets";

export type FixOptions = {
  readonly barred?: readonly string[] | undefined;
  /** How many fixes to return; default 5. */
  readonly limit?: number | undefined;
};

const LARGEST_SEED = 3;
/** Triples of twelve items are 220; of forty they would be 9,880. */
const MOST_SEED_ITEMS = 12;
/** Keeps a badly made catalogue from holding up the screen. */
const MOST_LOOKS = 5_000;

/**
 * Ways to clear one finding by adding items, cheapest first. Sets of up to three items that clear it
 * are tried, and what those need in turn is added too, so that a fix never leaves a new finding
 * behind. This is a search over small sets, not a proof that nothing cheaper exists.
 */
export function fixesFor(
  model: Model,
  chosen: readonly string[],
  facts: Facts,
  finding: Pick<Finding, "rule">,
  { barred = [], limit = 5 }: FixOptions = {},
): readonly Fix[] {
  const ready = prepare(model);
  checkChoice(ready.itemIds, chosen, barred);
  const before = situation(chosen, facts);
  const findingsBefore = findingsIn(ready, before);
  if (!findingsBefore.some(({ rule }) => rule === finding.rule)) return [];

  const tolerated = new Set(findingsBefore.map(({ rule }) => rule).filter((rule) => rule !== finding.rule));
  const search: Search = {
    ready,
    tolerated,
    candidates: cheapestFirst(model, barred),
    effort: { left: MOST_LOOKS },
  };
  const fixes = new Map<string, Fix>();
  for (const seed of clearingSeeds(search, before, finding.rule)) {
    const closed = closeSelection(search, withItems(before, seed));
    if (!closed) continue;
    const fix = fixOf(ready, before, findingsBefore, neededOf(search, before, closed));
    fixes.set(fix.add.join("\n"), fix);
  }
  return [...fixes.values()].toSorted(byPriceThenHours).slice(0, limit);
}

/**
 * One selection that closes every finding, cheapest first at each step, or null when the search finds
 * none. A good guess for "with what is missing"; the provably best completion is another calculation.
 */
export function fixAll(
  model: Model,
  chosen: readonly string[],
  facts: Facts,
  barred: readonly string[] = [],
): Fix | null {
  const ready = prepare(model);
  checkChoice(ready.itemIds, chosen, barred);
  const before = situation(chosen, facts);
  const search: Search = {
    ready,
    tolerated: new Set(),
    candidates: cheapestFirst(model, barred),
    effort: { left: MOST_LOOKS },
  };
  const closed = closeSelection(search, before);
  return closed && fixOf(ready, before, findingsIn(ready, before), neededOf(search, before, closed));
}

function cheapestFirst(model: Model, barred: readonly string[]): readonly string[] {
  const isBarred = new Set(barred);
  return model.items
    .filter(({ id }) => !isBarred.has(id))
    .toSorted(
      (a, b) => Number(a.price ?? 0) - Number(b.price ?? 0) || Number(a.hours ?? 0) - Number(b.hours ?? 0),
    )
    .map(({ id }) => id);
}

/** Smallest sets first; a set that contains one that already clears the finding is not tried. */
function* clearingSeeds(search: Search, before: Situation, rule: string): Generator<readonly string[]> {
  const candidates = candidatesFor(search, rule, before);
  const cleared: (readonly string[])[] = [];
  for (let size = 1; size <= LARGEST_SEED; size += 1) {
    const pool = size === 1 ? candidates : candidates.slice(0, MOST_SEED_ITEMS);
    for (const seed of subsets(pool, size)) {
      if (cleared.some((smaller) => smaller.every((id) => seed.includes(id)))) continue;
      if (isBroken(search, rule, withItems(before, seed))) continue;
      cleared.push(seed);
      yield seed;
    }
  }
}

/**
 * The added items without those that can be left out again, the dearest tried first; and again, since one that
 * leaves takes along what it alone asked for.
 */
function neededOf(search: Search, before: Situation, closed: Situation): ReadonlySet<string> {
  const added = new Set(
    search.candidates.filter((id) => closed.selected.has(id) && !before.selected.has(id)),
  );
  for (let hasLeft = true; hasLeft; ) {
    hasLeft = false;
    for (const id of [...added].reverse()) {
      added.delete(id);
      if (openFindings(search, withItems(before, added)).length === 0) hasLeft = true;
      else added.add(id);
    }
  }
  return added;
}

function byPriceThenHours(a: Fix, b: Fix): number {
  return a.price - b.price || a.hours - b.hours || a.leadDays - b.leadDays || a.add.length - b.add.length;
}
