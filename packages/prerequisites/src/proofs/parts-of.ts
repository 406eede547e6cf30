import type { OpenConstraints } from "./open-constraints";

type Joined = { readonly rootOf: (variable: number) => number };

/** What shares no constraint, apart; a variable that no constraint names is a part of its own. */
export function partsOf({ variables, clauses, sums }: OpenConstraints): readonly OpenConstraints[] {
  const { rootOf } = joined(variables, [...clauses.map(({ literals }) => literals), ...sums.map(literalsOf)]);
  type Part = {
    variables: number[];
    clauses: OpenConstraints["clauses"][number][];
    sums: OpenConstraints["sums"][number][];
  };
  const parts = new Map<number, Part>();
  for (const variable of variables) {
    const part = parts.get(rootOf(variable));
    if (part) part.variables.push(variable);
    else parts.set(rootOf(variable), { variables: [variable], clauses: [], sums: [] });
  }
  for (const clause of clauses) parts.get(rootOf(Math.abs(clause.literals[0] ?? 0)))?.clauses.push(clause);
  for (const sum of sums) parts.get(rootOf(Math.abs(sum.terms[0]?.literal ?? 0)))?.sums.push(sum);
  return [...parts.values()];
}

/** Sums of no more terms hold their items together as a rule does; wider ones only share out what is left. */
const NARROW = 8;

/**
 * The variable to decide next: of those that rules tie together, the first lot, and in it the one most rules
 * name. So a lot is finished before the next begins, and what is left of the wide sums is all they share.
 */
export function nextVariable(
  part: OpenConstraints,
  isWanted: (variable: number) => boolean,
): number | undefined {
  const wanted = part.variables.filter(isWanted);
  if (wanted.length === 0) return undefined;
  const tying = [
    ...part.clauses.map(({ literals }) => literals),
    ...part.sums.filter(({ terms }) => terms.length <= NARROW).map(literalsOf),
  ];
  const { rootOf } = joined(part.variables, tying);
  const uses = new Map<number, number>();
  for (const literals of tying) {
    for (const literal of literals) uses.set(Math.abs(literal), (uses.get(Math.abs(literal)) ?? 0) + 1);
  }
  const tied = wanted.find((variable) => uses.has(variable));
  if (tied === undefined) return wanted[0];
  const lot = wanted.filter((variable) => rootOf(variable) === rootOf(tied));
  return lot.reduce((best, variable) =>
    (uses.get(variable) ?? 0) > (uses.get(best) ?? 0) ? variable : best,
  );
}

function literalsOf({ terms }: OpenConstraints["sums"][number]): readonly number[] {
  return terms.map(({ literal }) => literal);
}

function joined(variables: readonly number[], ties: readonly (readonly number[])[]): Joined {
  const parents = new Map(variables.map((variable) => [variable, variable]));
  const rootOf = (variable: number): number => {
    let root = variable;
    for (let up = parents.get(root); up !== undefined && up !== root; up = parents.get(root)) root = up;
    parents.set(variable, root);
    return root;
  };
  for (const [first = 0, ...others] of ties) {
    for (const other of others) parents.set(rootOf(Math.abs(other)), rootOf(Math.abs(first)));
  }
  return { rootOf };
}
