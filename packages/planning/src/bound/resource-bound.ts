import type { Calendar } from "../model/calendar";

/** A task as one resource sees it: work is units times duration. */
export type Load = { readonly head: number; readonly tail: number; readonly work: number };

/**
 * The earliest end that one resource allows: of the tasks that cannot start before an instant and have a tail of at least
 * so much, the work needs its open time before the shortest of the tails follows. Over all pairs of instant and tail this
 * is, for one unit, the preemptive one-machine bound (Jackson 1955, Carlier 1982).
 */
export function resourceBound(loads: readonly Load[], capacity: number, hours: Calendar | null): number {
  if (capacity <= 0) return 0;
  const byTail = loads.filter(({ work }) => work > 0).sort((a, b) => b.tail - a.tail);
  const heads = [...new Set(byTail.map(({ head }) => head))];
  let bound = 0;
  for (const from of heads) {
    let work = 0;
    for (const load of byTail) {
      if (load.head < from) continue;
      work += load.work;
      bound = Math.max(bound, doneBy(from, Math.ceil(work / capacity), hours) + load.tail);
    }
  }
  return bound;
}

function doneBy(from: number, openTime: number, hours: Calendar | null): number {
  if (!hours) return from + openTime;
  const place = { start: 0, end: 0 };
  return hours.earliest(from, openTime, true, place) ? place.end : Number.POSITIVE_INFINITY;
}
