import type { Problem } from "../model/problem";
import { rowOf } from "../model/rows";
import { type HeadsAndTails, headsAndTails } from "./heads-and-tails";
import { type Load, resourceBound } from "./resource-bound";

/** What no schedule can go below: of the critical path and what each resource allows the largest. */
export function lowerBound(problem: Problem): number {
  const times = headsAndTails(problem);
  if (problem.objective === "weighted-tardiness") return tardinessBound(problem, times);
  const path = times.headEnd.reduce((latest, end) => Math.max(latest, end), 0);
  return problem.capacity.reduce(
    (bound, _, resource) => Math.max(bound, boundOf(problem, resource, times)),
    path,
  );
}

function boundOf(problem: Problem, resource: number, { head, tail }: HeadsAndTails): number {
  const { size, uses, duration, capacity, hours, clusters } = problem;
  const units = capacity[resource] ?? 0;
  const loads: Load[] = [];
  const alone: Load[] = [];
  for (let task = 0; task < size; task += 1) {
    const used = rowOf(uses, task).find(([item]) => item === resource)?.[1] ?? 0;
    if (used === 0) continue;
    const times = { head: head[task] ?? 0, tail: tail[task] ?? 0 };
    const length = duration[task] ?? 0;
    loads.push({ ...times, work: used * length });
    // Two that each need more than half cannot run together, however much is left over beside them.
    if (2 * used > units) alone.push({ ...times, work: length });
  }
  const open = hours[resource] ?? null;
  // Holds run overnight, so they need time of the clock.
  const held = clusters.flatMap(({ holds }) => holds.filter((hold) => hold.resource === resource));
  const kept = held.map(
    ({ from, to, units: count, leastLength }): Load => ({
      head: head[from] ?? 0,
      tail: tail[to] ?? 0,
      work: count * leastLength,
    }),
  );
  return Math.max(
    resourceBound(loads, units, open),
    resourceBound(kept, units, null),
    units > 1 ? resourceBound(alone, 1, open) : 0,
  );
}

/** Every task may be on time but for its own critical path. */
function tardinessBound({ due, weight }: Problem, { headEnd }: HeadsAndTails): number {
  return headEnd.reduce(
    (sum, end, task) =>
      sum + (weight[task] ?? 1) * Math.max(0, end - (due[task] ?? Number.POSITIVE_INFINITY)),
    0,
  );
}
