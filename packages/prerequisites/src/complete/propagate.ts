import type { Conflict } from "./conflict";
import type { Encoding, Literal } from "./encoding";
import { Propagator } from "./propagator";

/** What follows at once from what is given. */
export type Propagation = {
  /** By variable: 1 true, −1 false, 0 open. */
  readonly values: Int8Array;
  /** Null, or what cannot hold. */
  readonly conflict: Conflict | null;
};

/** Unit propagation over clauses and sums from what is given; it stops at the first conflict. */
export function propagate(encoding: Encoding, given: readonly Literal[]): Propagation {
  const run = new Propagator(encoding);
  return { conflict: run.assume(given) ?? run.rest(), values: run.values };
}
