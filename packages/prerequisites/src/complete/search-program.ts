import type { Literal, Term } from "./encoding";

/** What a search engine is asked: whole numbers only, variables 1 to `variables`. */
export type SearchProgram = {
  readonly variables: number;
  /** At least one literal of each is true. */
  readonly clauses: readonly (readonly Literal[])[];
  /** Σ weight of the true literals ≥ least. */
  readonly sums: readonly { readonly terms: readonly Term[]; readonly least: bigint }[];
  /** Σ weight of the true literals is to be least, the first before the second and so on. */
  readonly objectives: readonly (readonly Term[])[];
  /** Variables 1 to `shown` are told back. */
  readonly shown: number;
};

export type SearchAnswer = {
  /** `proven`: `found` is the best, or there is none. `stopped`: the time was up or the search died. */
  readonly status: "proven" | "stopped";
  /** The true ones among the variables shown, of the best solution known; null when none is. */
  readonly found: readonly number[] | null;
  /** The first objective is proven to be at least this. */
  readonly least: bigint;
};

/**
 * A general solver, wherever it runs. Its time limit is its own; once the time is up it answers `stopped`.
 * `share` is how much of the time left it may take for this program: 1 is all of it.
 */
export type Search = (program: SearchProgram, share?: number) => Promise<SearchAnswer>;
