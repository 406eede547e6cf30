import type { Literal } from "./encoding";
import { type Measure, type Measures, totalOf } from "./measures";
import type { Component } from "./residue";

/**
 * What a part costs at least, without a search. Each rule that needs one of some items needs at least
 * the cheapest of them; what one rule has paid for an item no other rule counts again. Lead times are
 * not summed: the slowest need decides.
 */
export function leastPossible(part: Component, items: number, measures: Measures, measure: Measure): bigint {
  const left = new Map<number, bigint>();
  for (const variable of part.variables) {
    left.set(variable, variable <= items ? totalOf(measures, measure, [variable - 1]) : 0n);
  }
  let bound = 0n;
  for (const needed of [...needs(part)].sort((a, b) => a.length - b.length)) {
    const cheapest = leastOf(needed.map((variable) => left.get(variable) ?? 0n));
    if (measure === "leadDays") {
      if (cheapest > bound) bound = cheapest;
      continue;
    }
    bound += cheapest;
    for (const variable of needed) left.set(variable, (left.get(variable) ?? 0n) - cheapest);
  }
  return bound;
}

function leastOf(costs: readonly bigint[]): bigint {
  const [first = 0n, ...others] = costs;
  let least = first;
  for (const cost of others) if (cost < least) least = cost;
  return least;
}

/** Lists of variables of each of which at least one is true, whatever else is. */
function* needs({ clauses, sums }: Component): Generator<readonly Literal[]> {
  for (const { literals } of clauses) if (literals.every((literal) => literal > 0)) yield literals;
  for (const { terms, least } of sums) {
    let withoutAny = -least;
    for (const { literal, weight } of terms) if (literal < 0) withoutAny += weight;
    if (withoutAny < 0n) yield terms.map(({ literal }) => literal).filter((literal) => literal > 0);
  }
}
