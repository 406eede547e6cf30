import type { Literal } from "./encoding";
import type { Measures } from "./measures";
import type { Level, PartQuestion } from "./part-program";
import { Propagator } from "./propagator";
import type { Component } from "./residue";
import { type SmallPart, smallPart } from "./small-part";

/** After so many steps a general solver is quicker. */
const MOST_STEPS = 250;

/** `found`: the true variables of the best, null when there is none. */
export type Settled = { readonly found: readonly number[] | null };

/**
 * The best of a small part without a solver, or null when it is not that easy. Adding nothing is always cheapest; a
 * rule that then breaks needs one of the items it hopes for, so these are tried in turn, and whatever costs more
 * than the best already is left.
 */
export function settleSmallPart(
  part: Component,
  items: number,
  measures: Measures,
  question: PartQuestion,
): Settled | null {
  const small = smallPart(part, items, measures, question);
  return small && new SmallSearch(small, question.levels).settle();
}

class SmallSearch {
  readonly #run: Propagator;
  #steps = 0;
  #best: { readonly on: readonly number[]; readonly rank: readonly number[] } | null = null;

  constructor(
    private readonly part: SmallPart,
    private readonly levels: readonly Level[],
  ) {
    this.#run = new Propagator(part.encoding);
  }

  settle(): Settled | null {
    if (!this.#run.rest() && this.part.barred.every((literal) => this.#run.follow(literal))) this.#look();
    if (this.#steps > MOST_STEPS) return null;
    return { found: this.#best?.on.map((own) => this.part.variableAt(own)) ?? null };
  }

  #look(): void {
    this.#steps += 1;
    if (this.#isOver()) return;
    const open = this.#brokenHopes();
    const [fewest] = open;
    if (!fewest) {
      this.#keepIfBest();
      return;
    }
    if (this.#isNoBetter(open)) return;
    const before = this.#run.mark();
    for (const hope of fewest) {
      const mark = this.#run.mark();
      if (this.#run.follow(hope)) this.#look();
      this.#run.undo(mark);
      if (this.#isOver() || !this.#run.follow(-hope)) break;
    }
    this.#run.undo(before);
  }

  /** Out of steps, or one answer is as good as any other. */
  #isOver(): boolean {
    return this.#steps > MOST_STEPS || (this.#best !== null && this.levels.length === 0);
  }

  #isNoBetter(open: readonly (readonly Literal[])[]): boolean {
    if (!this.#best) return false;
    const known = this.#best.rank[0] ?? 0;
    const least = this.#costAtLeast(open);
    return least > known || (least === known && this.levels.length === 1);
  }

  /** For each rule that breaks when nothing more is added, what it hopes for; the fewest first. */
  #brokenHopes(): readonly (readonly Literal[])[] {
    const { clauses, sums } = this.part.encoding;
    const found: Literal[][] = [];
    const isOpen = (literal: Literal): boolean => literal > 0 && this.#run.value(literal) === 0;
    for (const { literals } of clauses) {
      if (!literals.some((literal) => this.#holds(literal))) found.push(literals.filter(isOpen));
    }
    for (const { terms, least } of sums) {
      let left = least;
      for (const { literal, weight } of terms) if (this.#holds(literal)) left -= weight;
      if (left > 0n) found.push(terms.map(({ literal }) => literal).filter(isOpen));
    }
    const { first } = this.part;
    const cheapest = (a: Literal, b: Literal): number => (first[a] ?? 0) - (first[b] ?? 0);
    return found.map((hopes) => hopes.sort(cheapest)).sort((a, b) => a.length - b.length);
  }

  #holds(literal: Literal): boolean {
    const value = this.#run.value(literal);
    return literal > 0 ? value === 1 : value !== -1;
  }

  /** What is in already, and the cheapest way to keep rules that hope for different items. */
  #costAtLeast(open: readonly (readonly Literal[])[]): number {
    const { first } = this.part;
    const [level] = this.levels;
    const isLargest = level === "leadDays";
    let cost = 0;
    for (const own of this.#on())
      cost = isLargest ? Math.max(cost, first[own] ?? 0) : cost + (first[own] ?? 0);
    const left = first.slice();
    for (const hopes of open) {
      const cheapest = Math.min(...hopes.map((hope) => left[hope] ?? 0));
      if (isLargest) {
        cost = Math.max(cost, cheapest);
        continue;
      }
      cost += cheapest;
      for (const hope of hopes) left[hope] = (left[hope] ?? 0) - cheapest;
    }
    return cost;
  }

  #keepIfBest(): void {
    const on = this.#on();
    const rank = this.levels.flatMap((level) => this.part.rankOf(level, on));
    if (!this.#best || isBefore(rank, this.#best.rank)) this.#best = { on, rank };
  }

  #on(): readonly number[] {
    const on: number[] = [];
    for (let own = 1; own <= this.part.encoding.variables; own += 1)
      if (this.#run.value(own) === 1) on.push(own);
    return on;
  }
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, place) => value !== b[place]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
