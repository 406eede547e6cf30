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
};

/**
 * In how many ways the variables that are shown can be chosen so that the others can follow.
 * Parts that share no constraint are counted apart and multiplied; a part that was met before, with the
 * same left of its sums, is not counted again.
 *
 * @source Bacchus, Dalmao, Pitassi, "Algorithms and complexity results for #SAT and Bayesian inference",
 *         FOCS 2003 (decomposition with component caching); Aziz, Chu, Muise, Stuckey, "#∃SAT: Projected
 *         model counting", SAT 2015 (deciding the projected variables first). From memory.
 */
export function countSelections(
  open: OpenConstraints,
  isShown: (variable: number) => boolean,
  limits: CountLimits,
): SelectionCount {
  const counting = new Counting(isShown, limits);
  const first = assume(open, []);
  const count = first ? counting.count(first.open) : 0n;
  return { isExact: !counting.isStopped, count };
}

/** Steps between two looks at the time. */
const PATIENCE = 64;

class Counting {
  isStopped = false;
  readonly #known = new Map<string, bigint>();
  readonly #budget: Budget;
  #untilLook = PATIENCE;

  constructor(
    private readonly isShown: (variable: number) => boolean,
    private readonly limits: CountLimits,
  ) {
    this.#budget = { left: limits.steps };
  }

  count(open: OpenConstraints): bigint {
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
    if (!this.isStopped) this.#known.set(key, count);
    return count;
  }

  #countBoth(part: OpenConstraints, variable: number): bigint {
    let count = 0n;
    for (const literal of [-variable, variable]) {
      const next = assume(part, [literal]);
      if (next) count += this.count(next.open);
    }
    return count;
  }

  /** Nothing is shown any more: it only matters whether there is a way. */
  #countHidden(part: OpenConstraints): bigint {
    const found = someModel(part, this.#budget);
    if (found === "unsettled") this.isStopped = true;
    return found === null || found === "unsettled" ? 0n : 1n;
  }

  #step(): boolean {
    this.#budget.left -= 1;
    this.#untilLook -= 1;
    if (this.#untilLook <= 0) {
      this.#untilLook = PATIENCE;
      if (this.limits.isOver?.()) this.isStopped = true;
    }
    if (this.#budget.left < 0) this.isStopped = true;
    return !this.isStopped;
  }
}

/** The same variables and constraints with the same left of the sums are the same part. */
function keyOf({ variables, clauses, sums }: OpenConstraints): string {
  const ids = clauses.map(({ id }) => id).join(" ");
  return `${variables.join(" ")};${ids};${sums.map(({ id, least }) => `${id}:${least}`).join(" ")}`;
}
