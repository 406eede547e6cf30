import type { Conflict } from "../complete/conflict";
import type { Clause, Encoding, Literal, Sum } from "../complete/encoding";
import { propagate } from "../complete/propagate";

export type Constraints = { readonly clauses: readonly Clause[]; readonly sums: readonly Sum[] };

/**
 * Of constraints and given literals that conflict, a part that conflicts still and from which nothing can be
 * left out without propagation losing the conflict. What may go is tried first to last, then the constraints;
 * `always` and the
 * constraints from an origin on stay, and are named in the answer only where they have a part in the conflict.
 */
export function smallestConflict(
  constraints: Constraints,
  always: readonly Literal[],
  mayGo: readonly Literal[],
  staysFrom: number,
): Conflict {
  const own = new OwnNumbers(constraints, [...always, ...mayGo]);
  const given = own.inward(always);
  const goes = new Set(own.inward(mayGo));
  const first = propagate(own.encoding, [...given, ...goes]).conflict;
  if (!first) throw new Error("There is no conflict to make smaller.");
  let conflict: Conflict = first;
  const tried = new Set<Literal | string>();
  for (;;) {
    const { origins, given: met }: Conflict = conflict;
    const literal = [...goes].find((each) => met.has(each) && !tried.has(each));
    const origin =
      literal === undefined
        ? [...origins].find((each) => each < staysFrom && !tried.has(`${each}`))
        : undefined;
    if (literal === undefined && origin === undefined) return { origins, given: own.outward(met) };
    tried.add(literal ?? `${origin}`);
    const rest = own.encodingOf((each) => each >= staysFrom || (origins.has(each) && each !== origin));
    const givenRest = [...goes].filter((each) => met.has(each) && each !== literal);
    conflict = propagate(rest, [...given, ...givenRest]).conflict ?? conflict;
  }
}

/** A few constraints with their variables numbered from 1 on, so that asking them costs what they are worth. */
class OwnNumbers {
  readonly encoding: Encoding;
  readonly #inward = new Map<number, number>();
  readonly #outward: number[] = [0];

  constructor({ clauses, sums }: Constraints, given: readonly Literal[]) {
    const inward = (literal: Literal): Literal => this.#numbered(literal);
    this.inward(given);
    this.encoding = {
      items: 0,
      clauses: clauses.map(({ origin, literals }) => ({ origin, literals: literals.map(inward) })),
      sums: sums.map((sum) => ({
        ...sum,
        terms: sum.terms.map(({ literal, weight }) => ({ literal: inward(literal), weight })),
      })),
      variables: this.#outward.length - 1,
    };
  }

  encodingOf(includes: (origin: number) => boolean): Encoding {
    const { clauses, sums } = this.encoding;
    return {
      ...this.encoding,
      clauses: clauses.filter(({ origin }) => includes(origin)),
      sums: sums.filter(({ origin }) => includes(origin)),
    };
  }

  inward(literals: readonly Literal[]): readonly Literal[] {
    return literals.map((literal) => this.#numbered(literal));
  }

  outward(literals: ReadonlySet<Literal>): ReadonlySet<Literal> {
    return new Set(
      [...literals].map((literal) => Math.sign(literal) * (this.#outward[Math.abs(literal)] ?? 0)),
    );
  }

  #numbered(literal: Literal): Literal {
    const variable = Math.abs(literal);
    let own = this.#inward.get(variable);
    if (own === undefined) {
      own = this.#outward.push(variable) - 1;
      this.#inward.set(variable, own);
    }
    return Math.sign(literal) * own;
  }
}
