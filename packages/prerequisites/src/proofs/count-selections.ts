import { assume } from "./assume";
import type { OpenConstraints } from "./open-constraints";
import { nextVariable, partsOf } from "./parts-of";
import { type Budget, someModel } from "./some-model";

export type SelectionCount = {
  /** Whether there are just so many; otherwise there are at least so many. */
  readonly isExact: boolean;
  readonly count: bigint;
};

export type CountLimits = {
  /** Decisions that may be made. */
  readonly steps: number;
  /** Asked now and then: whether the time is up. */
  readonly isOver?: (() => boolean) | undefined;
  /** Awaited now and then, so that others get their turn. */
  readonly pause?: (() => Promise<void>) | undefined;
};

/** Decisions between two pauses: some ten milliseconds. */
const SLICE = 500;

/**
 * In how many ways the variables that are shown can be chosen so that the others can follow.
 * Parts that share no constraint are counted apart and multiplied; a part that was met before, with the
 * same left of its sums, is not counted again. So a count that pauses begins anew and is soon where it was.
 *
 * @source Bacchus, Dalmao, Pitassi, "Algorithms and complexity results for #SAT and Bayesian inference",
 *         FOCS 2003 (decomposition with component caching); Aziz, Chu, Muise, Stuckey, "#∃SAT: Projected
 *         model counting", SAT 2015 (deciding the projected variables first). From memory.
 */
export async function countSelections(
  open: OpenConstraints,
  isShown: (variable: number) => boolean,
  { steps, isOver, pause }: CountLimits,
): Promise<SelectionCount> {
  const first = assume(open, []);
  if (!first) return { isExact: true, count: 0n };
  const counting = new Counting(isShown);
  let best = 0n;
  for (let left = steps, slice = SLICE; ; ) {
    const known = counting.knownParts;
    const { isExact, count } = counting.run(first.open, Math.min(slice, left));
    if (isExact) return { isExact, count };
    if (count > best) best = count;
    left -= slice;
    if (left <= 0 || isOver?.()) return { isExact: false, count: best };
    // Where nothing was finished in a slice, more of it is needed to get anywhere.
    if (counting.knownParts === known) slice *= 2;
    await pause?.();
  }
}

class Counting {
  #isStopped = false;
  readonly #known = new Map<string, bigint>();
  readonly #budget: Budget = { left: 0 };

  constructor(private readonly isShown: (variable: number) => boolean) {}

  get knownParts(): number {
    return this.#known.size;
  }

  run(open: OpenConstraints, steps: number): SelectionCount {
    this.#isStopped = false;
    this.#budget.left = steps;
    const count = this.#count(open);
    return { isExact: !this.#isStopped, count };
  }

  #count(open: OpenConstraints): bigint {
    let product = 1n;
    // Small parts first: when the steps run out in the largest, the others are counted in full.
    const parts = [...partsOf(open)].sort((a, b) => a.variables.length - b.variables.length);
    for (const part of parts) {
      const isFree = part.clauses.length === 0 && part.sums.length === 0;
      if (!isFree) product *= this.#countPart(part);
      else if (part.variables.some(this.isShown)) product *= 2n;
      if (product === 0n) return 0n;
    }
    return product;
  }

  #countPart(part: OpenConstraints): bigint {
    const key = keyOf(part);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    if (!this.#step()) return 0n;
    const variable = nextVariable(part, this.isShown);
    const count = variable === undefined ? this.#countHidden(part) : this.#countBoth(part, variable);
    if (!this.#isStopped) this.#known.set(key, count);
    return count;
  }

  #countBoth(part: OpenConstraints, variable: number): bigint {
    let count = 0n;
    for (const literal of [-variable, variable]) {
      const next = assume(part, [literal]);
      if (next) count += this.#count(next.open);
    }
    return count;
  }

  /** Nothing is shown any more: it only matters whether there is a way. */
  #countHidden(part: OpenConstraints): bigint {
    const found = someModel(part, this.#budget);
    if (found === "unsettled") this.#isStopped = true;
    return found === null || found === "unsettled" ? 0n : 1n;
  }

  #step(): boolean {
    this.#budget.left -= 1;
    if (this.#budget.left < 0) this.#isStopped = true;
    return !this.#isStopped;
  }
}

/** The same variables and constraints with the same left of the sums are the same part. */
function keyOf({ variables, clauses, sums }: OpenConstraints): string {
  const ids = clauses.map(({ id }) => id).join(" ");
  return `${variables.join(" ")};${ids};${sums.map(({ id, least }) => `${id}:${least}`).join(" ")}`;
}
