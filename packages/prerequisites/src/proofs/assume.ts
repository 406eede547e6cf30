import type { Literal } from "../complete/encoding";
import type { OpenClause, OpenConstraints, OpenSum } from "./open-constraints";

export type Assumed = {
  readonly open: OpenConstraints;
  /** The given literals and all that follow from them at once. */
  readonly settled: readonly Literal[];
};

/** What is left once the literals hold, everything that follows at once taken in; null when that cannot be. */
export function assume(before: OpenConstraints, given: readonly Literal[]): Assumed | null {
  const values = new Map<number, boolean>();
  const settled: Literal[] = [];
  const set = (literal: Literal): boolean => {
    const known = values.get(Math.abs(literal));
    if (known !== undefined) return known === literal > 0;
    values.set(Math.abs(literal), literal > 0);
    settled.push(literal);
    return true;
  };
  if (!given.every(set)) return null;
  let { clauses, sums } = before;
  for (let seen = -1; seen < settled.length; ) {
    seen = settled.length;
    const left = clausesLeft(clauses, values, set);
    const summed = left && sumsLeft(sums, values, set);
    if (!left || !summed) return null;
    clauses = left;
    sums = summed;
  }
  const variables = before.variables.filter((variable) => !values.has(variable));
  return { open: { variables, clauses, sums }, settled };
}

type Values = ReadonlyMap<number, boolean>;
type Setter = (literal: Literal) => boolean;

function clausesLeft(clauses: readonly OpenClause[], values: Values, set: Setter) {
  const left: OpenClause[] = [];
  for (const clause of clauses) {
    const open: Literal[] = [];
    let isMet = false;
    for (const literal of clause.literals) {
      const value = values.get(Math.abs(literal));
      if (value === undefined) open.push(literal);
      else if (value === literal > 0) isMet = true;
    }
    if (isMet) continue;
    const [only] = open;
    if (only === undefined) return null;
    if (open.length > 1)
      left.push(open.length < clause.literals.length ? { ...clause, literals: open } : clause);
    else if (!set(only)) return null;
  }
  return left;
}

function sumsLeft(sums: readonly OpenSum[], values: Values, set: Setter) {
  const left: OpenSum[] = [];
  for (const sum of sums) {
    const open = openSum(sum, values);
    if (open.least <= 0) continue;
    let slack = -open.least;
    for (const { weight } of open.terms) slack += weight;
    if (slack < 0) return null;
    for (const { literal, weight } of open.terms) if (weight > slack && !set(literal)) return null;
    left.push(open);
  }
  return left;
}

function openSum(sum: OpenSum, values: Values): OpenSum {
  let { least } = sum;
  const terms = sum.terms.filter(({ literal, weight }) => {
    const value = values.get(Math.abs(literal));
    if (value === literal > 0) least -= weight;
    return value === undefined;
  });
  return terms.length < sum.terms.length ? { ...sum, terms, least } : sum;
}
