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
  for (const watch of watches.all) if (watch.margin < 0n) want(watch.hopes);
  for (let variable = queue.pop(); variable !== undefined; variable = queue.pop()) {
    for (const { watch, weight } of watches.losing.get(variable) ?? []) {
      const held = watch.margin >= 0n;
      watch.margin -= weight;
      if (held && watch.margin < 0n) want(watch.hopes);
    }
  }
  return wanted;
}

/** By how much a constraint holds while all that may be wanted is out; below 0 it needs its hopes. */
type Watch = { margin: bigint; readonly hopes: readonly Literal[] };

function watchesOf({ clauses, sums }: Encoding, values: Int8Array) {
  const all: Watch[] = [];
  const losing = new Map<number, { watch: Watch; weight: bigint }[]>();
  const add = (terms: readonly (readonly [Literal, bigint])[], least: bigint): void => {
    const open = terms.filter(([literal]) => values[Math.abs(literal)] === 0);
    let margin = -least;
    for (const [literal, weight] of terms) {
      const value = values[Math.abs(literal)] ?? 0;
      if (literal > 0 ? value === 1 : value !== 1) margin += weight;
    }
    const watch: Watch = { margin, hopes: open.map(([literal]) => literal).filter((literal) => literal > 0) };
    all.push(watch);
    for (const [literal, weight] of open) {
      if (literal > 0) continue;
      const known = losing.get(-literal);
      if (known) known.push({ watch, weight });
      else losing.set(-literal, [{ watch, weight }]);
    }
  };
  for (const { literals } of clauses) {
    add(
      literals.map((literal) => [literal, 1n]),
      1n,
    );
  }
  for (const { terms, least } of sums) {
    add(
      terms.map(({ literal, weight }) => [literal, weight]),
      least,
    );
  }
  return { all, losing };
}
