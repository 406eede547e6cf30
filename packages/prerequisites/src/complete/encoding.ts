/** A variable that is true (+v) or false (−v); variables count from 1: the items in order, then auxiliaries. */
export type Literal = number;

/** At least one literal is true. */
export type Clause = { readonly origin: number; readonly literals: readonly Literal[] };

export type Term = { readonly literal: Literal; readonly weight: bigint };

/** Σ weight of the true literals ≥ least; every weight is above 0 and every variable occurs once. */
export type Sum = { readonly origin: number; readonly terms: readonly Term[]; readonly least: bigint };

/** A model on one vehicle as clauses and sums. `origin` counts the groups first, then the rules. */
export type Encoding = {
  readonly items: number;
  /** Items and auxiliaries together. */
  readonly variables: number;
  readonly clauses: readonly Clause[];
  readonly sums: readonly Sum[];
};
