import type { Literal, Term } from "./encoding";
import type { Measure, Measures } from "./measures";
import type { Component } from "./residue";
import type { SearchProgram } from "./search-program";

/** What is made least, in turn; `order` prefers what comes earlier among the items. */
export type Level = Measure | "number" | "order";

export type PartQuestion = {
  readonly levels: readonly Level[];
  /** The largest lead time that is there anyhow: less than that saves nothing. */
  readonly leadFloor: bigint;
  /** No item with a larger lead time may be added; null for no such limit. */
  readonly leadCap: bigint | null;
};

export type PartProgram = {
  /** Whether the first objective is the first level; a level without any weight is left out. */
  readonly isFirstLevelFirst: boolean;
  readonly program: SearchProgram;
  /** What a variable of the program is in the whole. */
  readonly variableAt: (own: number) => number;
};

const CODES_PER_LEVEL = 30;

/** The program that finds the best of one part. Its variables are numbered anew, items first. */
export function partProgram(
  part: Component,
  items: number,
  measures: Measures,
  question: PartQuestion,
): PartProgram {
  const own = new Map(part.variables.map((variable, at) => [variable, at + 1]));
  const local = (literal: Literal): Literal =>
    Math.sign(literal) * (own.get(Math.abs(literal)) ?? Number.NaN);
  const shown = part.variables.filter((variable) => variable <= items);
  const weighed = (measure: Measure): readonly Term[] =>
    shown.map((variable, at) => ({ literal: at + 1, weight: measures[measure].amounts[variable - 1] ?? 0n }));

  const clauses: (readonly Literal[])[] = part.clauses.map(({ literals }) => literals.map(local));
  const { leadCap } = question;
  if (leadCap !== null) {
    for (const { literal, weight } of weighed("leadDays")) if (weight > leadCap) clauses.push([-literal]);
  }
  const objectives: (readonly Term[])[] = [];
  const counted = shown.filter((variable) => variable <= measures.counted).length;
  let variables = part.variables.length;
  for (const level of question.levels) {
    if (level === "number") objectives.push(ones(counted));
    else if (level === "order") objectives.push(...orderLevels(counted));
    else if (level !== "leadDays") objectives.push(positive(weighed(level)));
    else {
      const steps = leadSteps(weighed(level), question.leadFloor, variables);
      variables += steps.terms.length;
      clauses.push(...steps.clauses);
      objectives.push(steps.terms);
    }
  }
  const sums = part.sums.map(({ terms, least }) => ({
    least,
    terms: terms.map(({ literal, weight }) => ({ literal: local(literal), weight })),
  }));
  return {
    isFirstLevelFirst: (objectives[0]?.length ?? 0) > 0,
    program: {
      variables,
      clauses,
      sums,
      objectives: objectives.filter(({ length }) => length > 0),
      shown: part.variables.length,
    },
    variableAt: (own) => part.variables[own - 1] ?? Number.NaN,
  };
}

function ones(count: number): readonly Term[] {
  return Array.from({ length: count }, (_, at) => ({ literal: at + 1, weight: 1n }));
}

function positive(terms: readonly Term[]): readonly Term[] {
  return terms.filter(({ weight }) => weight > 0n);
}

/** The largest of some lead times as a sum: one variable per distinct lead time says "at least this long". */
function leadSteps(terms: readonly Term[], floor: bigint, variables: number) {
  const above = terms.filter(({ weight }) => weight > floor);
  const leads = [...new Set(above.map(({ weight }) => weight))].sort((a, b) => (a < b ? -1 : 1));
  const stepOf = new Map(leads.map((lead, at) => [lead, variables + 1 + at]));
  const clauses: (readonly Literal[])[] = above.map(({ literal, weight }) => [
    -literal,
    stepOf.get(weight) ?? Number.NaN,
  ]);
  const steps = leads.map((lead, at): Term => {
    const step = variables + 1 + at;
    if (at > 0) clauses.push([-step, step - 1]);
    return { literal: step, weight: lead - (leads[at - 1] ?? floor) };
  });
  return { clauses, terms: steps };
}

/** Leaving out an earlier item costs more than leaving out all later ones; several levels keep it within range. */
function orderLevels(shown: number): readonly (readonly Term[])[] {
  const levels: Term[][] = [];
  for (let first = 1; first <= shown; first += CODES_PER_LEVEL) {
    const last = Math.min(shown, first + CODES_PER_LEVEL - 1);
    levels.push(
      Array.from({ length: last - first + 1 }, (_, at) => ({
        literal: -(first + at),
        weight: 2n ** BigInt(last - first - at),
      })),
    );
  }
  return levels;
}
