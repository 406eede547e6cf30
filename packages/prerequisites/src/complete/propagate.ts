import type { Encoding, Literal } from "./encoding";

/** What follows at once from what is given. */
export type Propagation = {
  /** By variable: 1 true, −1 false, 0 open. */
  readonly values: Int8Array;
  /** Null, or what cannot hold: origins of rules and groups, and the given literals they met. */
  readonly conflict: Conflict | null;
};

export type Conflict = { readonly origins: ReadonlySet<number>; readonly given: ReadonlySet<Literal> };

const NOTHING = -1;

/** Unit propagation over clauses and sums, with the reason of each step kept to explain a conflict. */
export function propagate(encoding: Encoding, given: readonly Literal[]): Propagation {
  const run = new Propagator(encoding);
  return { conflict: run.follow(given), values: run.values };
}

class Propagator {
  readonly values: Int8Array;
  /** By variable: which constraint forced it (clauses first, then sums), or NOTHING for what is given. */
  readonly #reasons: Int32Array;
  readonly #steps: Int32Array;
  readonly #trail: Literal[] = [];
  readonly #clausesWith: readonly (readonly number[])[];
  readonly #sumsWith: readonly (readonly { readonly sum: number; readonly weight: bigint }[])[];
  readonly #falseIn: Int32Array;
  readonly #slacks: bigint[];

  constructor(private readonly encoding: Encoding) {
    const { variables, clauses, sums } = encoding;
    this.values = new Int8Array(variables + 1);
    this.#reasons = new Int32Array(variables + 1).fill(NOTHING);
    this.#steps = new Int32Array(variables + 1);
    this.#falseIn = new Int32Array(clauses.length);
    this.#slacks = sums.map(({ terms, least }) => terms.reduce((all, { weight }) => all + weight, -least));
    const clausesWith: number[][] = Array.from({ length: 2 * variables + 2 }, () => []);
    clauses.forEach(({ literals }, at) => {
      for (const literal of literals) clausesWith[slot(literal)]?.push(at);
    });
    const sumsWith: { sum: number; weight: bigint }[][] = Array.from({ length: 2 * variables + 2 }, () => []);
    sums.forEach(({ terms }, at) => {
      for (const { literal, weight } of terms) sumsWith[slot(literal)]?.push({ sum: at, weight });
    });
    this.#clausesWith = clausesWith;
    this.#sumsWith = sumsWith;
  }

  follow(given: readonly Literal[]): Conflict | null {
    const { clauses, sums } = this.encoding;
    for (const literal of given) this.#assign(literal, NOTHING);
    for (let at = 0; at < clauses.length; at += 1) if (this.#lookAtClause(at)) return this.#explain(at);
    for (let at = 0; at < sums.length; at += 1) {
      if (this.#lookAtSum(at)) return this.#explain(clauses.length + at);
    }
    for (let next = 0; next < this.#trail.length; next += 1) {
      const broken = this.#spread(this.#trail[next] ?? 0);
      if (broken !== NOTHING) return this.#explain(broken);
    }
    return null;
  }

  /** What the falsity of −literal does to the constraints that hoped for it; the broken one, or NOTHING. */
  #spread(literal: Literal): number {
    for (const at of this.#clausesWith[slot(-literal)] ?? []) {
      this.#falseIn[at] = (this.#falseIn[at] ?? 0) + 1;
      if (this.#lookAtClause(at)) return at;
    }
    for (const { sum, weight } of this.#sumsWith[slot(-literal)] ?? []) {
      this.#slacks[sum] = (this.#slacks[sum] ?? 0n) - weight;
      if (this.#lookAtSum(sum)) return this.encoding.clauses.length + sum;
    }
    return NOTHING;
  }

  /** Forces the last open literal; true when the clause is broken. */
  #lookAtClause(at: number): boolean {
    const literals = this.encoding.clauses[at]?.literals ?? [];
    const left = literals.length - (this.#falseIn[at] ?? 0);
    if (left > 1) return false;
    if (left === 0) return true;
    const last = literals.find((literal) => this.#value(literal) === 1) ?? this.#open(literals);
    if (last !== undefined && this.#value(last) === 0) this.#assign(last, at);
    return false;
  }

  #open(literals: readonly Literal[]): Literal | undefined {
    return literals.find((literal) => this.#value(literal) === 0);
  }

  /** Forces every literal that the sum cannot do without; true when even all open ones do not reach. */
  #lookAtSum(at: number): boolean {
    const slack = this.#slacks[at] ?? 0n;
    if (slack < 0n) return true;
    for (const { literal, weight } of this.encoding.sums[at]?.terms ?? []) {
      if (weight > slack && this.#value(literal) === 0) {
        this.#assign(literal, this.encoding.clauses.length + at);
      }
    }
    return false;
  }

  #value(literal: Literal): number {
    const value = this.values[Math.abs(literal)] ?? 0;
    return literal > 0 ? value : -value;
  }

  #assign(literal: Literal, reason: number): void {
    const variable = Math.abs(literal);
    if (this.values[variable] !== 0) return;
    this.values[variable] = literal > 0 ? 1 : -1;
    this.#reasons[variable] = reason;
    this.#steps[variable] = this.#trail.length;
    this.#trail.push(literal);
  }

  /** Back along the reasons from a broken constraint to what was given. */
  #explain(broken: number): Conflict {
    const origins = new Set<number>();
    const given = new Set<Literal>();
    const seen = new Set<number>();
    const visit = [{ constraint: broken, before: this.#trail.length }];
    for (let next = visit.pop(); next; next = visit.pop()) {
      const { clauses, sums } = this.encoding;
      const { constraint, before } = next;
      const clause = clauses[constraint];
      const sum = sums[constraint - clauses.length];
      origins.add((clause ?? sum)?.origin ?? NOTHING);
      for (const literal of clause?.literals ?? sum?.terms.map((term) => term.literal) ?? []) {
        const variable = Math.abs(literal);
        const step = this.#steps[variable] ?? 0;
        if (this.#value(literal) !== -1 || step >= before || seen.has(variable)) continue;
        seen.add(variable);
        const reason = this.#reasons[variable] ?? NOTHING;
        if (reason === NOTHING) given.add(-literal);
        else visit.push({ constraint: reason, before: step });
      }
    }
    return { origins, given };
  }
}

function slot(literal: Literal): number {
  return literal > 0 ? 2 * literal : -2 * literal + 1;
}
