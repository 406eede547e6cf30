import { type Conflict, conflictFrom, NOTHING, type Trail } from "./conflict";
import type { Encoding, Literal } from "./encoding";
import { type Occurrences, occurrencesIn, slot } from "./occurrences";

/**
 * Unit propagation over clauses and sums, with the reason of each step kept to explain a conflict. What
 * is given can be taken back to any earlier mark, so that one reading of the rules serves many questions.
 */
export class Propagator {
  /** By variable: 1 true, −1 false, 0 open. */
  readonly values: Int8Array;
  readonly #trailByVariable: Trail;
  readonly #trail: Literal[] = [];
  /** How much of the trail the constraints have heard of. */
  #heard = 0;
  readonly #occurrences: Occurrences;
  readonly #falseIn: Int32Array;
  readonly #slacks: bigint[];

  constructor(private readonly encoding: Encoding) {
    const { variables, clauses, sums } = encoding;
    this.values = new Int8Array(variables + 1);
    this.#trailByVariable = {
      values: this.values,
      reasons: new Int32Array(variables + 1).fill(NOTHING),
      steps: new Int32Array(variables + 1),
    };
    this.#occurrences = occurrencesIn(encoding);
    this.#falseIn = new Int32Array(clauses.length);
    this.#slacks = sums.map(({ terms, least }) => terms.reduce((all, { weight }) => all + weight, -least));
  }

  /** Takes literals as given and follows nothing yet, so that `rest` meets the shortest ways to a conflict first. */
  assume(given: readonly Literal[]): Conflict | null {
    for (const literal of given) {
      if (this.value(literal) === -1) return this.whyNot(literal);
      this.#assign(literal, NOTHING);
    }
    return null;
  }

  /** What follows from the rules and what was assumed; to be asked before anything is given, and once. */
  rest(): Conflict | null {
    const { clauses, sums } = this.encoding;
    for (let at = 0; at < clauses.length + sums.length; at += 1) {
      if (this.#isBroken(at)) return this.#brokenBy(at);
    }
    return this.#brokenBy(this.#spread());
  }

  /** Takes a literal as given and follows what it forces. After a conflict, `undo` before anything else. */
  give(literal: Literal): Conflict | null {
    if (this.value(literal) === -1) return this.whyNot(literal);
    this.#assign(literal, NOTHING);
    return this.#brokenBy(this.#spread());
  }

  /** As `give`, without asking why not. */
  follow(literal: Literal): boolean {
    if (this.value(literal) === -1) return false;
    this.#assign(literal, NOTHING);
    return this.#spread() === NOTHING;
  }

  /** Where the trail is now, to be handed to `undo`. */
  mark(): number {
    return this.#trail.length;
  }

  undo(mark: number): void {
    for (let at = this.#trail.length - 1; at >= mark; at -= 1) {
      const literal = this.#trail[at] ?? 0;
      if (at < this.#heard) this.#count(-literal, -1);
      this.values[Math.abs(literal)] = 0;
    }
    this.#trail.length = mark;
    this.#heard = Math.min(this.#heard, mark);
  }

  value(literal: Literal): number {
    const value = this.values[Math.abs(literal)] ?? 0;
    return literal > 0 ? value : -value;
  }

  /** Why a literal that is false cannot be true. */
  whyNot(literal: Literal): Conflict {
    const { reasons, steps } = this.#trailByVariable;
    const constraint = reasons[Math.abs(literal)] ?? NOTHING;
    if (constraint === NOTHING) return { origins: new Set(), given: new Set([literal, -literal]) };
    const before = steps[Math.abs(literal)] ?? 0;
    const { origins, given } = conflictFrom(this.encoding, this.#trailByVariable, {
      constraint,
      forced: -literal,
      before,
    });
    return { origins, given: new Set([...given, literal]) };
  }

  /** Tells the constraints what became of their hopes; the one that is broken, or NOTHING. */
  #spread(): number {
    while (this.#heard < this.#trail.length) {
      const falsified = -(this.#trail[this.#heard] ?? 0);
      this.#heard += 1;
      this.#count(falsified, 1);
      const { starts, constraints } = this.#occurrences;
      const end = starts[slot(falsified) + 1] ?? 0;
      for (let at = starts[slot(falsified)] ?? 0; at < end; at += 1) {
        const constraint = constraints[at] ?? 0;
        if (this.#isBroken(constraint)) return constraint;
      }
    }
    return NOTHING;
  }

  /** Tells the constraints that hoped for a literal that it is false (1), or that it may be true again (−1). */
  #count(falsified: Literal, by: 1 | -1): void {
    const { clauses, sums } = this.encoding;
    const { starts, constraints, terms } = this.#occurrences;
    const end = starts[slot(falsified) + 1] ?? 0;
    for (let at = starts[slot(falsified)] ?? 0; at < end; at += 1) {
      const constraint = constraints[at] ?? 0;
      if (constraint < clauses.length) {
        this.#falseIn[constraint] = (this.#falseIn[constraint] ?? 0) + by;
        continue;
      }
      const sum = constraint - clauses.length;
      const weight = sums[sum]?.terms[terms[at] ?? 0]?.weight ?? 0n;
      this.#slacks[sum] = (this.#slacks[sum] ?? 0n) - (by > 0 ? weight : -weight);
    }
  }

  /** Forces what the constraint cannot do without; true when even all that is open does not keep it. */
  #isBroken(constraint: number): boolean {
    const { clauses } = this.encoding;
    return constraint < clauses.length
      ? this.#isClauseBroken(constraint)
      : this.#isSumBroken(constraint - clauses.length);
  }

  #isClauseBroken(at: number): boolean {
    const literals = this.encoding.clauses[at]?.literals ?? [];
    const left = literals.length - (this.#falseIn[at] ?? 0);
    if (left > 1) return false;
    if (left === 0) return true;
    let open = 0;
    for (const literal of literals) {
      const value = this.value(literal);
      if (value === 1) return false;
      if (value === 0) open = literal;
    }
    if (open !== 0) this.#assign(open, at);
    return false;
  }

  #isSumBroken(at: number): boolean {
    const slack = this.#slacks[at] ?? 0n;
    if (slack < 0n) return true;
    for (const { literal, weight } of this.encoding.sums[at]?.terms ?? []) {
      if (weight > slack && this.value(literal) === 0) {
        this.#assign(literal, this.encoding.clauses.length + at);
      }
    }
    return false;
  }

  #assign(literal: Literal, reason: number): void {
    const variable = Math.abs(literal);
    if (this.values[variable] !== 0) return;
    this.values[variable] = literal > 0 ? 1 : -1;
    this.#trailByVariable.reasons[variable] = reason;
    this.#trailByVariable.steps[variable] = this.#trail.length;
    this.#trail.push(literal);
  }

  #brokenBy(constraint: number): Conflict | null {
    if (constraint === NOTHING) return null;
    return conflictFrom(this.encoding, this.#trailByVariable, {
      constraint,
      forced: 0,
      before: this.#trail.length,
    });
  }
}
