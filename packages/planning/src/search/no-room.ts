import { ImpossibleInputError } from "@buildproof/units";
import type { PlanModel } from "../model/plan-question";
import type { Problem } from "../model/problem";
import { rowOf } from "../model/rows";

/** Why no schedule was found: a settled task that leaves too little before it, or hours or holds that leave no place. */
export function noRoom(problem: Problem, { tasks }: PlanModel, end: Float64Array): ImpossibleInputError {
  const isPressed = (task: number): boolean => (end[task] ?? 0) > (problem.latestEnd[task] ?? 0);
  const pressed = problem.order.findLast(isPressed);
  if (pressed !== undefined) {
    const id = tasks[settledAfter(problem, pressed)]?.id ?? "";
    return new ImpossibleInputError(
      "broken-fixed",
      `The task "${id}" is fixed where "${tasks[pressed]?.id}" cannot be done before it: fix it later or take it out of "fixed".`,
      `fixed.${id}`,
    );
  }
  const held = problem.clusters[0]?.tasks[0] ?? 0;
  const lost = end.indexOf(Number.POSITIVE_INFINITY);
  const at = lost < 0 ? held : lost;
  return new ImpossibleInputError(
    "no-room",
    `No place was found for the task "${tasks[at]?.id}": open its resources longer, or let holds and fixed tasks leave more room.`,
    `tasks[${at}]`,
  );
}

/** A settled task that waits for this one, directly or through others. */
function settledAfter({ after, fixed }: Problem, task: number): number {
  const reached = new Set([task]);
  for (const at of reached) {
    if (at !== task && !Number.isNaN(fixed[at] ?? Number.NaN)) return at;
    for (const [next] of rowOf(after, at)) reached.add(next);
  }
  return task;
}
