import type { Conflict } from "../complete/conflict";
import type { Encoding, Literal } from "../complete/encoding";
import type { Problem } from "../complete/problem";
import { Propagator } from "../complete/propagator";
import { type Constraints, smallestConflict } from "./smallest-conflict";

/** What speaks against an item: choices, groups and rules by their origin, and what is barred, as literals. */
export type Core = {
  readonly chosen: readonly Literal[];
  readonly origins: readonly number[];
  readonly barred: readonly Literal[];
};

/** The choices as they stand, with all that follows from them, to be asked for one more item at a time. */
export class Standing {
  readonly #run: Propagator;
  /** Before any choice, and with all of them. */
  readonly #bare: number;
  readonly #full: number;
  readonly #byOrigin: ReadonlyMap<number, Constraints>;

  /** The choices without those that clash with an earlier one. */
  readonly #kept: readonly Literal[];

  constructor(private readonly problem: Problem) {
    const encoding = keepable(problem.encoding, problem.barred);
    this.#byOrigin = byOrigin(encoding);
    this.#run = started(encoding, problem.barred).run;
    this.#bare = this.#run.mark();
    this.#kept = problem.chosen.filter((choice) => this.#giveIfPossible(choice));
    this.#full = this.#run.mark();
  }

  /** Why the item cannot be added, or null where nothing is found against it. */
  conflictWith(item: Literal): Conflict | null {
    const conflict = this.#run.give(item);
    this.#run.undo(this.#full);
    return conflict;
  }

  /** As little of a conflict as is enough for it: without a choice, if it needs none. */
  smallestCore(item: Literal, { origins, given }: Conflict): Core {
    const { given: staysFrom = Number.POSITIVE_INFINITY } = this.problem;
    const staying = [...this.#byOrigin.keys()].filter((origin) => origin >= staysFrom);
    const concerned = [...new Set([...origins, ...staying])].flatMap(
      (origin) => this.#byOrigin.get(origin) ?? [],
    );
    const isChoice = (literal: Literal): boolean => literal > 0 && literal !== item;
    const smallest = smallestConflict(
      {
        clauses: concerned.flatMap(({ clauses }) => clauses),
        sums: concerned.flatMap(({ sums }) => sums),
      },
      [...given].filter((literal) => !isChoice(literal)),
      [...given].filter(isChoice),
      staysFrom,
    );
    return {
      chosen: [...smallest.given].filter(isChoice).sort(ascending),
      origins: [...smallest.origins].sort(ascending),
      barred: [...smallest.given].filter((literal) => literal < 0).sort((a, b) => b - a),
    };
  }

  /**
   * For each item the choices without which nothing would be found against it, or why it could not be had
   * without any choice either. Takes all choices back.
   */
  withoutChoices(items: readonly Literal[]): ReadonlyMap<Literal, readonly Literal[] | Conflict> {
    this.#run.undo(this.#bare);
    const found = new Map<Literal, readonly Literal[] | Conflict>();
    for (const item of items) {
      const conflict = this.#run.give(item);
      found.set(item, conflict ?? this.#kept.filter((choice) => !this.#giveIfPossible(choice)));
      this.#run.undo(this.#bare);
    }
    return found;
  }

  #giveIfPossible(literal: Literal): boolean {
    const mark = this.#run.mark();
    const isPossible = !this.#run.give(literal);
    if (!isPossible) this.#run.undo(mark);
    return isPossible;
  }
}

function started(encoding: Encoding, barred: readonly Literal[]) {
  const run = new Propagator(encoding);
  let conflict = run.rest();
  for (const literal of barred) conflict ??= run.give(literal);
  return { run, conflict };
}

/** Without what can hold on no vehicle like this, whatever is chosen: that speaks against no one item. */
function keepable(encoding: Encoding, barred: readonly Literal[]): Encoding {
  const { conflict } = started(encoding, barred);
  if (!conflict) return encoding;
  const { origins } = conflict;
  const rest = {
    ...encoding,
    clauses: encoding.clauses.filter(({ origin }) => !origins.has(origin)),
    sums: encoding.sums.filter(({ origin }) => !origins.has(origin)),
  };
  return keepable(rest, barred);
}

function byOrigin({ clauses, sums }: Encoding): ReadonlyMap<number, Constraints> {
  const found = new Map<
    number,
    { clauses: Encoding["clauses"][number][]; sums: Encoding["sums"][number][] }
  >();
  const at = (origin: number) => {
    const known = found.get(origin) ?? { clauses: [], sums: [] };
    found.set(origin, known);
    return known;
  };
  for (const clause of clauses) at(clause.origin).clauses.push(clause);
  for (const sum of sums) at(sum.origin).sums.push(sum);
  return found;
}

function ascending(a: number, b: number): number {
  return a - b;
}
