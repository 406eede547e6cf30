import type { Encoding, Literal } from "./encoding";

/**
 * The open variables that an answer could want to be true. Leaving out everything keeps all rules but
 * some; what those hope for is wanted, and so on for what that brings along. Whatever else a possible
 * selection contains can be taken out of it and no rule breaks: so nothing that is best is lost.
 */
export function reachable(encoding: Encoding, values: Int8Array): ReadonlySet<number> {
  const wanted = new Set<number>();
  const queue: number[] = [];
  const want = (literals: Iterable<Literal>): void => {
    for (const literal of literals) {
      if (literal < 0 || values[literal] !== 0 || wanted.has(literal)) continue;
      wanted.add(literal);
      queue.push(literal);
    }
  };
  const watches = watchesOf(encoding, values);
  for (const watch of watches.all) if (watch.margin < 0n) want(watch.literals);
  for (let variable = queue.pop(); variable !== undefined; variable = queue.pop()) {
    for (const { watch, weight } of watches.losing[variable] ?? []) {
      const held = watch.margin >= 0n;
      watch.margin -= weight;
      if (held && watch.margin < 0n) want(watch.literals);
    }
  }
  return wanted;
}

/** By how much a constraint holds while all that may be wanted is out; below 0 it needs its hopes. */
type Watch = { margin: bigint; readonly literals: readonly Literal[] };

type Loss = { readonly watch: Watch; readonly weight: bigint };

function watchesOf({ variables, clauses, sums }: Encoding, values: Int8Array) {
  const all: Watch[] = [];
  const losing: (Loss[] | undefined)[] = Array.from({ length: variables + 1 });
  const stands = (literal: Literal): boolean =>
    literal > 0 ? values[literal] === 1 : values[-literal] !== 1;
  const loses = (literal: Literal, loss: Loss): void => {
    if (literal > 0 || values[-literal] !== 0) return;
    const known = losing[-literal];
    if (known) known.push(loss);
    else losing[-literal] = [loss];
  };
  for (const { literals } of clauses) {
    let margin = -1n;
    for (const literal of literals) if (stands(literal)) margin += 1n;
    const watch: Watch = { margin, literals };
    all.push(watch);
    for (const literal of literals) loses(literal, { watch, weight: 1n });
  }
  for (const { terms, least } of sums) {
    let margin = -least;
    for (const { literal, weight } of terms) if (stands(literal)) margin += weight;
    const watch: Watch = { margin, literals: terms.map(({ literal }) => literal) };
    all.push(watch);
    for (const { literal, weight } of terms) loses(literal, { watch, weight });
  }
  return { all, losing };
}
