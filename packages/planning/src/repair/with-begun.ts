import type { PlanModel } from "../model/plan-question";
import { prepare } from "../model/prepare";

type Starts = Readonly<Record<string, number>>;

/**
 * The question with what has begun settled where it is. Work that may not pause and lost its hours under way begins
 * again; the others pause and go on. What something begun had waited for is done, and nothing about it changes any more.
 */
export function withBegun(changed: PlanModel, old: PlanModel, start: Starts, now: number): PlanModel {
  const over = doneBefore(old, start, now);
  const model = {
    ...changed,
    tasks: changed.tasks.map((task, at) => (over.has(task.id) ? (old.tasks[at] ?? task) : task)),
  };
  const { calendar, duration, isSplittable } = prepare({ ...model, fixed: {} });
  const place = { start: 0, end: 0 };
  const fixed: Record<string, number> = {};
  const tasks = model.tasks.map((task, at) => {
    const begun = start[task.id];
    if (begun === undefined || begun >= now) return task;
    const hours = calendar[at];
    const goesOn = hours?.earliest(begun, duration[at] ?? 0, isSplittable[at] === true, place) ?? true;
    if (hours && (!goesOn || place.start !== begun)) return task;
    fixed[task.id] = begun;
    // A part that was late for a task that has begun after all was not needed to begin.
    return { ...task, release: Math.min(task.release ?? 0, begun) };
  });
  return { ...model, tasks, fixed };
}

/** Everything that a task which has begun waited for, directly or through others. */
export function doneBefore({ tasks }: PlanModel, start: Starts, now: number): ReadonlySet<string> {
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const begun = tasks.filter(({ id }) => (start[id] ?? now) < now);
  const done = new Set(begun.flatMap(({ after = [] }) => after.map(({ task }) => task)));
  for (const id of done) for (const { task } of byId.get(id)?.after ?? []) done.add(task);
  return done;
}
