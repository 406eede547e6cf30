import { Calendar } from "./calendar";
import type { Problem } from "./problem";
import { mergedSpans } from "./spans";

/** Longer than any plan, in any unit that is sensible. */
const FOR_EVER = 2 ** 52;

/**
 * The same question seen backwards from a horizon: planning it early is planning the question late. Releases and the
 * ends that settled tasks allow are left out, and before the first opening everything is open: what goes beyond is told
 * by its lateness, and only plans made forwards are ever shown.
 */
export function mirror(problem: Problem, horizon: number): Problem {
  const { size, calendar, fixed, duration, isSplittable } = problem;
  const seen = new Map<Calendar, Calendar>();
  const place = { start: 0, end: 0 };
  const mirrored = (hours: Calendar | null): Calendar | null => {
    if (!hours) return null;
    const known = seen.get(hours);
    if (known) return known;
    const back = hours.mirrored(horizon).spans;
    const made = new Calendar(mergedSpans([...back, [back.at(-1)?.[1] ?? 0, FOR_EVER]]));
    seen.set(hours, made);
    return made;
  };
  return {
    ...problem,
    order: [...problem.order].reverse(),
    release: new Float64Array(size),
    before: problem.after,
    after: problem.before,
    calendar: calendar.map(mirrored),
    fixed: fixed.map((start, task) => {
      if (Number.isNaN(start)) return start;
      const hours = calendar[task];
      if (!hours) return horizon - start - (duration[task] ?? 0);
      hours.earliest(start, duration[task] ?? 0, isSplittable[task] === true, place);
      return horizon - place.end;
    }),
    latestEnd: new Float64Array(size).fill(Number.POSITIVE_INFINITY),
    clusters: problem.clusters.map(({ tasks, holds }) => ({
      tasks,
      holds: holds.map((hold) => ({ ...hold, from: hold.to, to: hold.from })),
    })),
  };
}
