import type { Place } from "../model/calendar";
import type { Problem } from "../model/problem";
import { rowOf } from "../model/rows";

export type HeadsAndTails = {
  /** Earliest start and end of each task were there resources enough: releases, lags and opening hours count. */
  readonly head: Float64Array;
  readonly headEnd: Float64Array;
  /** Time that must pass between its end and the end of everything. */
  readonly tail: Float64Array;
};

/** The two passes of the critical path method (Kelley and Walker 1959), the forward one through opening hours. */
export function headsAndTails(problem: Problem): HeadsAndTails {
  const { size, order, before, after, duration, release, calendar, isSplittable, fixed } = problem;
  const head = new Float64Array(size);
  const headEnd = new Float64Array(size);
  const tail = new Float64Array(size);
  const place: Place = { start: 0, end: 0 };
  for (const task of order) {
    const settled = fixed[task] ?? Number.NaN;
    let ready = Number.isNaN(settled) ? (release[task] ?? 0) : settled;
    for (const [earlier, lag] of rowOf(before, task)) ready = Math.max(ready, (headEnd[earlier] ?? 0) + lag);
    const length = duration[task] ?? 0;
    place.start = ready;
    place.end = ready + length;
    const hours = calendar[task];
    if (hours && !hours.earliest(ready, length, isSplittable[task] === true, place)) {
      place.start = place.end = Number.POSITIVE_INFINITY;
    }
    head[task] = place.start;
    headEnd[task] = place.end;
  }
  for (const task of [...order].reverse()) {
    for (const [next, lag] of rowOf(after, task)) {
      tail[task] = Math.max(tail[task] ?? 0, lag + (duration[next] ?? 0) + (tail[next] ?? 0));
    }
  }
  return { head, headEnd, tail };
}
