import type { Literal } from "../complete/encoding";
import type { OpenClause, OpenConstraints, OpenSum } from "./open-constraints";

export type Assumed = {
  readonly open: OpenConstraints;
  /** The given literals and all that follow from them at once. */
  readonly settled: readonly Literal[];
};

/** What is left once the literals hold, everything that follows at once taken in; null when that cannot be. */
export function assume(before: OpenConstraints, given: readonly Literal[]): Assumed | null {
  const settling = new Settling(before.variables);
  if (!given.every((literal) => settling.set(literal))) return null;
  let { clauses, sums } = before;
  for (let seen = -1; seen < settling.literals.length; ) {
    seen = settling.literals.length;
    const left = settling.clausesLeft(clauses);
    const summed = left && settling.sumsLeft(sums);
    if (!left || !summed) return null;
    clauses = left;
    sums = summed;
  }
  const variables = before.variables.filter((variable) => settling.isOpen(variable));
  return { open: { variables, clauses, sums }, settled: settling.literals };
}

const MET = -1;

class Settling {
  readonly literals: Literal[] = [];
  /** By variable: 1 true, −1 false, 0 open. */
  readonly #values: Int8Array;

  constructor(variables: readonly number[]) {
    let last = 0;
    for (const variable of variables) if (variable > last) last = variable;
    this.#values = new Int8Array(last + 1);
  }

  isOpen(variable: number): boolean {
    return this.#values[variable] === 0;
  }

  /** False when the opposite is settled. */
  set(literal: Literal): boolean {
    const known = this.#valueOf(literal);
    if (known !== 0) return known > 0;
    this.#values[Math.abs(literal)] = literal > 0 ? 1 : -1;
    this.literals.push(literal);
    return true;
  }

  clausesLeft(clauses: readonly OpenClause[]): readonly OpenClause[] | null {
    const left: OpenClause[] = [];
    for (const clause of clauses) {
      const open = this.#openIn(clause);
      if (open === MET) continue;
      if (open === 0) return null;
      if (open === clause.literals.length && open > 1) {
        left.push(clause);
        continue;
      }
      const literals = clause.literals.filter((literal) => this.#valueOf(literal) === 0);
      if (open > 1) left.push({ ...clause, literals });
      else for (const literal of literals) this.set(literal);
    }
    return left;
  }

  /** How many literals of a clause are open, or MET when one is true. */
  #openIn({ literals }: OpenClause): number {
    let open = 0;
    for (const literal of literals) {
      const value = this.#valueOf(literal);
      if (value > 0) return MET;
      if (value === 0) open += 1;
    }
    return open;
  }

  sumsLeft(sums: readonly OpenSum[]): readonly OpenSum[] | null {
    const left: OpenSum[] = [];
    for (const sum of sums) {
      const open = this.#openSum(sum);
      if (open.least <= 0) continue;
      let slack = -open.least;
      for (const { weight } of open.terms) slack += weight;
      if (slack < 0) return null;
      for (const { literal, weight } of open.terms) if (weight > slack) this.set(literal);
      left.push(open);
    }
    return left;
  }

  #openSum(sum: OpenSum): OpenSum {
    let { least } = sum;
    let open = 0;
    for (const { literal, weight } of sum.terms) {
      const value = this.#valueOf(literal);
      if (value > 0) least -= weight;
      else if (value === 0) open += 1;
    }
    if (open === sum.terms.length) return sum;
    return { ...sum, least, terms: sum.terms.filter(({ literal }) => this.#valueOf(literal) === 0) };
  }

  #valueOf(literal: Literal): number {
    const value = this.#values[Math.abs(literal)] ?? 0;
    return literal > 0 ? value : -value;
  }
}
