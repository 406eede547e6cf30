import { leastPossible } from "./least-possible";
import { type Measure, type Measures, totalOf } from "./measures";
import { type Level, partProgram } from "./part-program";
import type { Component } from "./residue";
import type { Search } from "./search-program";

/** What is to be added, by item index, beyond what propagation forces. */
export type Addition =
  | { readonly status: "optimal"; readonly add: readonly number[] }
  | { readonly status: "impossible" }
  /** `bound`: the asked measure is at least this; `add`: the best known, null when none is. */
  | { readonly status: "time-limit"; readonly add: readonly number[] | null; readonly bound: bigint };

export type Task = {
  readonly parts: readonly Component[];
  /** How many items the catalogue has. */
  readonly items: number;
  readonly measures: Measures;
  readonly minimise: Measure;
  /** Indices of items that are added whatever the parts decide. */
  readonly forced: readonly number[];
};

/** A part and the best known for it. */
type Part = {
  readonly component: Component;
  add: readonly number[] | null;
  isProven: boolean;
  bound: bigint;
};

const FIRST: Readonly<Record<Measure, readonly Level[]>> = {
  price: ["price", "hours", "leadDays", "number", "order"],
  hours: ["hours", "price", "leadDays", "number", "order"],
  // How long all parts together take is known only when each has said its own; then the rest is decided.
  leadDays: ["leadDays"],
};
const AGAIN: Readonly<Record<Measure, readonly Level[]>> = {
  price: ["price", "hours", "number", "order"],
  hours: ["hours", "price", "number", "order"],
  leadDays: ["price", "hours", "number", "order"],
};

/**
 * Parts are searched one by one, small ones first. Only the largest lead time binds them together: a
 * part that is ready sooner than the slowest may take that long too, when it saves something else.
 */
export async function bestAddition(task: Task, search: Search): Promise<Addition> {
  const { measures, minimise, forced } = task;
  const floor = totalOf(measures, "leadDays", forced);
  const parts = task.parts
    .map((component): Part => {
      const bound = leastPossible(component, task.items, measures, minimise);
      return { component, add: null, isProven: false, bound };
    })
    .sort((a, b) => a.component.variables.length - b.component.variables.length);

  for (const part of parts) {
    if (!(await improve(part, FIRST[minimise], floor, null))) return { status: "impossible" };
    if (part.isProven) part.bound = totalOf(measures, minimise, part.add ?? []);
  }
  if (parts.some(({ isProven }) => !isProven)) return stopped(task, parts);
  const slowest = totalOf(measures, "leadDays", [...forced, ...addedBy(parts)]);
  for (const part of parts) {
    if (isSettled(part)) continue;
    if (!(await improve(part, AGAIN[minimise], floor, slowest))) return { status: "impossible" };
    if (!part.isProven) return stopped(task, parts);
  }
  return { status: "optimal", add: addedBy(parts) };

  /** False when the part has no solution; a solution found is kept, proven best or not. */
  async function improve(
    part: Part,
    levels: readonly Level[],
    leadFloor: bigint,
    leadCap: bigint | null,
  ): Promise<boolean> {
    const { program, itemAt } = partProgram(part.component, task.items, measures, {
      levels,
      leadFloor,
      leadCap,
    });
    const { status, found, least } = await search(program);
    raiseBound(part, levels, leadFloor, least);
    part.isProven = status === "proven";
    const add = found?.map(itemAt);
    if (add && (part.isProven || isNoWorse(add, part.add))) part.add = add;
    return found !== null || status === "stopped";
  }

  /** The first level is the asked measure when it has any weight at all; lead times count from the floor. */
  function raiseBound(part: Part, [first]: readonly Level[], leadFloor: bigint, least: bigint): void {
    const items = part.component.variables.filter((variable) => variable <= task.items);
    const most = totalOf(
      measures,
      minimise,
      items.map((variable) => variable - 1),
    );
    if (first !== minimise || most <= (minimise === "leadDays" ? leadFloor : 0n)) return;
    const bound = minimise === "leadDays" ? leadFloor + least : least;
    if (bound > part.bound) part.bound = bound;
  }

  /** A search that was stopped may know less than the one before it. */
  function isNoWorse(add: readonly number[], than: readonly number[] | null): boolean {
    return !than || totalOf(measures, minimise, add) <= totalOf(measures, minimise, than);
  }

  /** Whether more time for the slowest of the added could change nothing in this part. */
  function isSettled({ component, add }: Part): boolean {
    if (minimise === "leadDays") return false;
    const own = totalOf(measures, "leadDays", [...forced, ...(add ?? [])]);
    return component.variables.every((variable) => {
      const lead = measures.leadDays.amounts[variable - 1] ?? 0n;
      return lead <= own || lead > slowest;
    });
  }
}

function addedBy(parts: readonly Part[]): readonly number[] {
  return parts.flatMap(({ add }) => add ?? []);
}

function stopped({ measures, minimise, forced }: Task, parts: readonly Part[]): Addition {
  const certain = totalOf(measures, minimise, forced);
  const bound = parts.reduce((whole, { bound: own }) => {
    if (minimise !== "leadDays") return whole + own;
    if (own > whole) return own;
    return whole;
  }, certain);
  return { status: "time-limit", add: parts.every(({ add }) => add) ? addedBy(parts) : null, bound };
}
