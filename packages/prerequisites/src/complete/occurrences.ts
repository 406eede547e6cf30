import type { Encoding, Literal } from "./encoding";

/** Where each literal stands, clauses counted first, then sums; flat, for it is built anew for every question. */
export type Occurrences = {
  /** Literal's slot → where its entries begin; they end where the next slot's begin. */
  readonly starts: Int32Array;
  readonly constraints: Int32Array;
  /** Beside each entry of a sum, which of its terms it is. */
  readonly terms: Int32Array;
};

/** A place of its own for every literal. */
export function slot(literal: Literal): number {
  return literal > 0 ? 2 * literal : -2 * literal + 1;
}

export function occurrencesIn({ variables, clauses, sums }: Encoding): Occurrences {
  const starts = new Int32Array(2 * variables + 3);
  const count = (literal: Literal): void => {
    const after = slot(literal) + 1;
    starts[after] = (starts[after] ?? 0) + 1;
  };
  for (const { literals } of clauses) for (const literal of literals) count(literal);
  for (const { terms } of sums) for (const { literal } of terms) count(literal);
  for (let at = 1; at < starts.length; at += 1) starts[at] = (starts[at] ?? 0) + (starts[at - 1] ?? 0);

  const entries = starts[starts.length - 1] ?? 0;
  const constraints = new Int32Array(entries);
  const termPlaces = new Int32Array(entries);
  const free = starts.slice();
  const put = (literal: Literal, constraint: number, term: number): void => {
    const at = free[slot(literal)] ?? 0;
    free[slot(literal)] = at + 1;
    constraints[at] = constraint;
    termPlaces[at] = term;
  };
  clauses.forEach(({ literals }, at) => {
    for (const literal of literals) put(literal, at, 0);
  });
  sums.forEach(({ terms }, at) => {
    terms.forEach(({ literal }, term) => {
      put(literal, clauses.length + at, term);
    });
  });
  return { starts, constraints, terms: termPlaces };
}
