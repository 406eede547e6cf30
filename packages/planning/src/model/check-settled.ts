import { ImpossibleInputError } from "@buildproof/units";
import { Profile } from "../schedule/profile";
import type { PlanModel } from "./plan-question";
import type { Problem } from "./problem";
import { rowOf } from "./rows";

type Refuse = (task: number, why: string) => never;

/**
 * Refuses settled starts that break a release, opening hours, an order among them, or a capacity.
 * @throws ImpossibleInputError naming the task
 */
export function checkSettled(problem: Problem, model: PlanModel): void {
  const { order, fixed } = problem;
  const settled = order.filter((task) => !Number.isNaN(fixed[task] ?? Number.NaN));
  const refuse: Refuse = (task, why) => {
    const id = model.tasks[task]?.id ?? "";
    const message = `The task "${id}" is fixed at ${fixed[task]}, ${why}: move it or take it out of "fixed".`;
    throw new ImpossibleInputError("broken-fixed", message, `fixed.${id}`);
  };
  const end = new Float64Array(problem.size).fill(Number.NaN);
  for (const task of settled) {
    end[task] = settledEnd(problem, task, refuse);
    for (const [earlier, lag] of rowOf(problem.before, task)) {
      const ready = (end[earlier] ?? Number.NaN) + lag;
      if (ready > (fixed[task] ?? 0)) {
        refuse(task, `before "${model.tasks[earlier]?.id}" lets it begin at ${ready}`);
      }
    }
  }
  checkCapacity(problem, model, settled, end, refuse);
}

function settledEnd(problem: Problem, task: number, refuse: Refuse): number {
  const { fixed, release, duration, calendar, isSplittable } = problem;
  const start = fixed[task] ?? 0;
  const length = duration[task] ?? 0;
  if (start < (release[task] ?? 0)) refuse(task, `before its release at ${release[task]}`);
  const hours = calendar[task];
  if (!hours) return start + length;
  const place = { start: 0, end: 0 };
  const isOpen = hours.earliest(start, length, isSplittable[task] === true, place);
  if (!isOpen || place.start !== start) refuse(task, "where its resources' hours do not let it run");
  return place.end;
}

/** Whatever holds share, what runs at one time uses no more than there is. */
function checkCapacity(
  { capacity, uses, fixed }: Problem,
  { resources }: PlanModel,
  settled: readonly number[],
  end: Float64Array,
  refuse: Refuse,
): void {
  const profiles = capacity.map((units) => new Profile(units));
  for (const task of settled) {
    const start = fixed[task] ?? 0;
    const length = (end[task] ?? 0) - start;
    for (const [resource, units] of rowOf(uses, task)) {
      const profile = profiles[resource];
      if (length > 0 && profile?.earliest(start, length, units) !== start) {
        refuse(task, `when "${resources[resource]?.id}" has not enough units left beside what else is fixed`);
      }
      profile?.take(start, start + length, units);
    }
  }
}
