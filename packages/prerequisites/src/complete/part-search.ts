import { type Measure, type Measures, totalOf } from "./measures";
import type { PartQuestion } from "./part-program";
import type { Component } from "./residue";
import { searchPart } from "./search-part";
import type { Search } from "./search-program";

export type Task = {
  readonly parts: readonly Component[];
  /** How many items the catalogue has. */
  readonly items: number;
  readonly measures: Measures;
  readonly minimise: Measure;
  /** Indices of items that are added whatever the parts decide. */
  readonly forced: readonly number[];
};

/** A part and the best known for it: item indices, and what it costs at least. */
export type Part = {
  readonly component: Component;
  add: readonly number[] | null;
  isProven: boolean;
  bound: bigint;
};

/** Searches one part and keeps what is learnt; false when it has no solution. */
export async function improve(
  { items, measures, minimise }: Task,
  part: Part,
  question: PartQuestion,
  search: Search,
): Promise<boolean> {
  const { status, found, least } = await searchPart(part.component, items, measures, question, search);
  const bound = minimise === "leadDays" ? question.leadFloor + least : least;
  if (question.levels[0] === minimise && least > 0n && bound > part.bound) part.bound = bound;
  part.isProven = status === "proven";
  // A search that was stopped may know less than the one before it.
  const cost = (add: readonly number[]): bigint => totalOf(measures, minimise, add);
  if (found && (part.isProven || !part.add || cost(found) <= cost(part.add))) part.add = found;
  return found !== null || status === "stopped";
}

/** Any solution of all parts at once, so that there is something to show when the time is up. */
export async function seekAny(task: Task, parts: readonly Part[], search: Search): Promise<boolean> {
  const { items, measures } = task;
  const components = parts.map(({ component }) => component);
  const whole: Component = {
    variables: components.flatMap(({ variables }) => variables).sort((a, b) => a - b),
    clauses: components.flatMap(({ clauses }) => clauses),
    sums: components.flatMap(({ sums }) => sums),
  };
  const question = { levels: [], leadFloor: 0n, leadCap: null };
  const { status, found } = await searchPart(whole, items, measures, question, search);
  if (!found) return status === "stopped";
  const on = new Set(found);
  for (const part of parts) {
    part.add = part.component.variables.map((variable) => variable - 1).filter((index) => on.has(index));
  }
  return true;
}
