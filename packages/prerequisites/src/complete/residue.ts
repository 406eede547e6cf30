import type { Clause, Encoding, Literal, Sum } from "./encoding";
import { reachable } from "./reachable";

/** A part of what is left to decide that shares no rule with any other part. */
export type Component = {
  /** Open variables, ascending: items in their order, then auxiliaries. */
  readonly variables: readonly number[];
  readonly clauses: readonly Clause[];
  readonly sums: readonly Sum[];
};

/** What propagation leaves to decide, in parts; variables that no part has are out. */
export function residue(encoding: Encoding, values: Int8Array): readonly Component[] {
  const wanted = reachable(encoding, values);
  /** As in `values`, what nobody wants out. */
  const truths = values.map((value, variable) => value || (wanted.has(variable) ? 0 : -1));
  const truthOf = (literal: Literal): number =>
    literal > 0 ? (truths[literal] ?? 0) : -(truths[-literal] ?? 0);
  const clauses: Clause[] = [];
  for (const { origin, literals } of encoding.clauses) {
    if (literals.some((literal) => truthOf(literal) === 1)) continue;
    clauses.push({ origin, literals: literals.filter((literal) => truthOf(literal) === 0) });
  }
  const sums = encoding.sums.flatMap((sum) => openSum(sum, truthOf));
  return components(encoding.variables, wanted, clauses, sums);
}

function openSum({ origin, terms, least }: Sum, truthOf: (literal: Literal) => number): Sum[] {
  let left = least;
  for (const { literal, weight } of terms) if (truthOf(literal) === 1) left -= weight;
  if (left <= 0n) return [];
  // More than is missing helps no more than what is missing.
  const open = terms
    .filter(({ literal }) => truthOf(literal) === 0)
    .map(({ literal, weight }) => ({ literal, weight: capped(weight, left) }));
  return [{ origin, terms: open, least: left }];
}

function components(
  variables: number,
  wanted: ReadonlySet<number>,
  clauses: readonly Clause[],
  sums: readonly Sum[],
): readonly Component[] {
  const parents = Int32Array.from({ length: variables + 1 }, (_, variable) => variable);
  const rootOf = (variable: number): number => {
    let root = variable;
    for (let up = parents[root] ?? 0; up !== root; up = parents[root] ?? 0) root = up;
    parents[variable] = root;
    return root;
  };
  const join = (literals: readonly Literal[]): void => {
    const first = rootOf(Math.abs(literals[0] ?? 0));
    for (const literal of literals) parents[rootOf(Math.abs(literal))] = first;
  };
  for (const { literals } of clauses) join(literals);
  for (const { terms } of sums) join(terms.map(({ literal }) => literal));

  const parts = new Map<number, { variables: number[]; clauses: Clause[]; sums: Sum[] }>();
  for (const variable of [...wanted].sort((a, b) => a - b)) {
    const root = rootOf(variable);
    const part = parts.get(root);
    if (part) part.variables.push(variable);
    else parts.set(root, { variables: [variable], clauses: [], sums: [] });
  }
  for (const clause of clauses) parts.get(rootOf(Math.abs(clause.literals[0] ?? 0)))?.clauses.push(clause);
  for (const sum of sums) parts.get(rootOf(Math.abs(sum.terms[0]?.literal ?? 0)))?.sums.push(sum);
  return [...parts.values()];
}

function capped(weight: bigint, most: bigint): bigint {
  if (weight > most) return most;
  return weight;
}
