import type { Literal } from "../complete/encoding";
import { assume } from "./assume";
import type { OpenConstraints } from "./open-constraints";

/** Steps that a search may still take. */
export type Budget = { left: number };

/**
 * Literals that keep every constraint whatever the rest is, found by trying: a way out of the first that is
 * open, then the opposite. Null when there are none, `unsettled` when the budget is used up before.
 */
export function someModel(open: OpenConstraints, budget: Budget): readonly Literal[] | null | "unsettled" {
  const literal = hopeOf(open);
  if (literal === undefined) return [];
  if (budget.left <= 0) return "unsettled";
  budget.left -= 1;
  for (const tried of [literal, -literal]) {
    const next = assume(open, [tried]);
    if (!next) continue;
    const rest = someModel(next.open, budget);
    if (rest === "unsettled") return rest;
    if (rest) return [...next.settled, ...rest];
  }
  return null;
}

function hopeOf({ clauses, sums }: OpenConstraints): Literal | undefined {
  const [clause] = clauses;
  if (clause) return clause.literals[0];
  const terms = sums[0]?.terms ?? [];
  return terms.reduce((best, term) => (term.weight > best.weight ? term : best), terms[0] ?? NONE)?.literal;
}

const NONE = { literal: undefined, weight: 0 };
