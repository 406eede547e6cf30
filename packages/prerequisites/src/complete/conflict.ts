import type { Encoding, Literal, Term } from "./encoding";

/** What cannot hold: origins of rules and groups, and the given literals they met. */
export type Conflict = { readonly origins: ReadonlySet<number>; readonly given: ReadonlySet<Literal> };

/** How things came to be as they are, by variable. */
export type Trail = {
  readonly values: Int8Array;
  /** Which constraint forced it (clauses first, then sums), or NOTHING for what is given. */
  readonly reasons: Int32Array;
  readonly steps: Int32Array;
};

/** In place of a constraint: nothing is broken, or nothing forced it but what was given. */
export const NOTHING = -1;

type Step = {
  readonly constraint: number;
  /** The literal it forced, or 0 when it was broken. */
  readonly forced: Literal;
  /** Only what was there before this step had a part in it. */
  readonly before: number;
};

/** Back along the reasons from a constraint that was broken, or that forced a literal, to what was given. */
export function conflictFrom(encoding: Encoding, trail: Trail, start: Step): Conflict {
  const { values, reasons, steps } = trail;
  const { clauses, sums } = encoding;
  const origins = new Set<number>();
  const given = new Set<Literal>();
  const seen = new Set<number>();
  const visit = [start];
  for (let next = visit.pop(); next; next = visit.pop()) {
    const { constraint, forced, before } = next;
    const wasFalse = (literal: Literal): boolean => {
      const variable = Math.abs(literal);
      return (values[variable] ?? 0) === -Math.sign(literal) && (steps[variable] ?? 0) < before;
    };
    const clause = clauses[constraint];
    const sum = sums[constraint - clauses.length];
    origins.add((clause ?? sum)?.origin ?? NOTHING);
    const lost = clause
      ? clause.literals.filter(wasFalse)
      : enoughOf(sum?.terms ?? [], sum?.least ?? 0n, forced, wasFalse);
    for (const literal of lost) {
      const variable = Math.abs(literal);
      if (seen.has(variable)) continue;
      seen.add(variable);
      const reason = reasons[variable] ?? NOTHING;
      if (reason === NOTHING) given.add(-literal);
      else visit.push({ constraint: reason, forced: -literal, before: steps[variable] ?? 0 });
    }
  }
  return { origins, given };
}

/** The heaviest of the false terms, as many as leave too little without the forced one. */
function enoughOf(
  terms: readonly Term[],
  least: bigint,
  forced: Literal,
  wasFalse: (literal: Literal) => boolean,
): readonly Literal[] {
  let left = -least;
  for (const { literal, weight } of terms) if (literal !== forced) left += weight;
  const enough: Literal[] = [];
  const lost = terms
    .filter(({ literal }) => wasFalse(literal))
    .sort((a, b) => (a.weight < b.weight ? 1 : -1));
  for (const { literal, weight } of lost) {
    if (left < 0n) break;
    left -= weight;
    enough.push(literal);
  }
  return enough;
}
