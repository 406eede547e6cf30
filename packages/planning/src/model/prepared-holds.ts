import { ImpossibleInputError } from "@buildproof/units";
import type { Names } from "./check-question";
import { between, type HoldGroup } from "./clusters";
import type { PlanModel } from "./plan-question";
import type { Problem } from "./problem";
import { rowOf } from "./rows";

type Tasks = Pick<Problem, "before" | "after" | "uses" | "order" | "duration">;

/**
 * The holds in indices. A task that two holds on one resource list is counted in both, which is the careful reading.
 * @throws ImpossibleInputError when no way leads from the first task of a hold to its last, so that it might never end
 */
export function preparedHolds({ holds = [] }: PlanModel, names: Names, tasks: Tasks): readonly HoldGroup[] {
  const counted = new Set<string>();
  return holds.map((hold, at) => {
    const [from, to, resource] = [names.task(hold.from), names.task(hold.to), names.resource(hold.resource)];
    const path = between(from, to, tasks.after, tasks.before);
    if (path.length === 0) {
      throw new ImpossibleInputError(
        "endless-hold",
        `The hold on "${hold.resource}" runs from "${hold.from}" to "${hold.to}", which does not come after it: let "${hold.to}" wait for "${hold.from}".`,
        `holds[${at}].to`,
      );
    }
    const listed = hold.tasks?.map((id) => names.task(id)) ?? path;
    const users = [...new Set(listed)].flatMap((task) => {
      const units = rowOf(tasks.uses, task).find(([used]) => used === resource)?.[1] ?? 0;
      if (units === 0) return [];
      const key = `${resource} ${task}`;
      const isCountedHere = !counted.has(key);
      counted.add(key);
      return [{ task, units, isCountedHere }];
    });
    return {
      resource,
      units: hold.units ?? 1,
      from,
      to,
      users,
      leastLength: leastLength(path, from, to, tasks),
      span: [...new Set([...path, ...listed])],
    };
  });
}

/** The longest way through a hold: durations and lags, without waiting for anything. */
function leastLength(
  path: readonly number[],
  from: number,
  to: number,
  { order, before, duration }: Tasks,
): number {
  const on = new Set(path);
  const ends = new Map<number, number>();
  for (const task of order) {
    if (!on.has(task)) continue;
    const start = rowOf(before, task).reduce(
      (latest, [earlier, lag]) => Math.max(latest, (ends.get(earlier) ?? Number.NEGATIVE_INFINITY) + lag),
      task === from ? 0 : Number.NEGATIVE_INFINITY,
    );
    ends.set(task, start + (duration[task] ?? 0));
  }
  return ends.get(to) ?? 0;
}
