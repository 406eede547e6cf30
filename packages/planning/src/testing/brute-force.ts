import type { PlanModel, PlanTask } from "../model/plan-question";
import { violations } from "./violations";

/**
 * The least objective there is, by trying every start of every task up to `horizon`; infinite when nothing holds. For
 * questions of a handful of tasks, to have the planner's answers from somewhere else.
 */
export function bruteForce(model: PlanModel, horizon: number): number {
  const { tasks } = model;
  const start: Record<string, number> = {};
  const end: Record<string, number> = {};
  let best = Number.POSITIVE_INFINITY;
  const cost = (): number =>
    tasks.reduce((sum, { id, due = Number.POSITIVE_INFINITY, weight = 1 }) => {
      const finish = end[id] ?? 0;
      if (model.objective === "weighted-tardiness") return sum + (finish > due ? weight * (finish - due) : 0);
      return Math.max(sum, finish);
    }, 0);
  const places = tasks.map((task) => placesOf(model, task, horizon));
  const place = (at: number): void => {
    const task = tasks[at];
    if (!task) {
      const reached = cost();
      if (reached < best && violations(model, start, end).length === 0) best = reached;
      return;
    }
    for (const [from, to] of places[at] ?? []) {
      start[task.id] = from;
      end[task.id] = to;
      if (model.objective === "weighted-tardiness" || to < best) place(at + 1);
    }
  };
  place(0);
  return best;
}

/** Starts and ends that a task could have if it were alone: its hours, pauses, release and settled start decide. */
function placesOf(model: PlanModel, task: PlanTask, horizon: number): readonly (readonly [number, number])[] {
  const alone: PlanModel = { ...model, tasks: [{ ...task, after: [] }], holds: [] };
  const instants = Array.from({ length: horizon + 1 }, (_, at) => at);
  return instants.flatMap((from) =>
    instants
      .filter((to) => to >= from + task.duration)
      .filter((to) => violations(alone, { [task.id]: from }, { [task.id]: to }).length === 0)
      .map((to) => [from, to] as const),
  );
}
