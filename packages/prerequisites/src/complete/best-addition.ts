import { leastPossible } from "./least-possible";
import { type Measure, totalOf } from "./measures";
import type { Level } from "./part-program";
import { improve, type Part, seekAny, type Task } from "./part-search";
import type { Search } from "./search-program";

/** What is to be added, by item index, beyond what propagation forces. */
export type Addition =
  | { readonly status: "optimal"; readonly add: readonly number[] }
  | { readonly status: "impossible" }
  /** `bound`: the asked measure is at least this; `add`: the best known, null when none is. */
  | { readonly status: "time-limit"; readonly add: readonly number[] | null; readonly bound: bigint };

/** With more variables than this some solution is sought before the best. */
const LARGE = 150;

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
  const parts = task.parts
    .map((component): Part => {
      const bound = leastPossible(component, task.items, measures, minimise);
      return { component, add: null, isProven: false, bound };
    })
    .sort((a, b) => a.component.variables.length - b.component.variables.length);
  if (!(await searchEach(task, parts, search))) return { status: "impossible" };
  if (parts.some(({ isProven }) => !isProven)) return stopped(task, parts);

  const slowest = totalOf(measures, "leadDays", [...forced, ...addedBy(parts)]);
  const leadFloor = totalOf(measures, "leadDays", forced);
  for (const part of parts) {
    if (isSettled(task, part, slowest)) continue;
    const question = { levels: AGAIN[minimise], leadFloor, leadCap: slowest };
    if (!(await improve(task, part, question, search))) return { status: "impossible" };
    if (!part.isProven) return stopped(task, parts);
  }
  return { status: "optimal", add: addedBy(parts) };
}

/** Each part by itself; false when one has no solution. */
async function searchEach(task: Task, parts: readonly Part[], search: Search): Promise<boolean> {
  const { measures, minimise } = task;
  const variables = parts.reduce((sum, { component }) => sum + component.variables.length, 0);
  if (variables > LARGE && !(await seekAny(task, parts, search))) return false;
  const leadFloor = totalOf(measures, "leadDays", task.forced);
  const question = { levels: FIRST[minimise], leadFloor, leadCap: null };
  // In the first round none may take the time of the others; in the second what is left is for the hard ones.
  for (const isFirst of [true, false]) {
    const open = parts.filter(({ isProven }) => !isProven);
    for (const [at, part] of open.entries()) {
      const share = isFirst ? 1 / (open.length - at) : 1;
      const isPossible = await improve(task, part, question, (program) => search(program, share));
      if (!isPossible) return false;
      if (part.isProven) part.bound = totalOf(measures, minimise, part.add ?? []);
    }
  }
  return true;
}

/** Whether more time for the slowest of all could change nothing in this part. */
function isSettled({ measures, minimise, forced }: Task, { component, add }: Part, slowest: bigint): boolean {
  if (minimise === "leadDays") return false;
  const own = totalOf(measures, "leadDays", [...forced, ...(add ?? [])]);
  return component.variables.every((variable) => {
    const lead = measures.leadDays.amounts[variable - 1] ?? 0n;
    return lead <= own || lead > slowest;
  });
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
