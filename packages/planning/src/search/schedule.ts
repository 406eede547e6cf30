/** A schedule that the search keeps: times, what it costs, and marks by which it is told from others. */
export type Schedule = {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly cost: number;
  /** Of equal cost the one that ends its tasks earlier leaves more room to improve. */
  readonly sumOfEnds: number;
  readonly hash: number;
};

/** Better first. */
export function compareSchedules(a: Schedule, b: Schedule): number {
  return a.cost - b.cost || a.sumOfEnds - b.sumOfEnds;
}

/** In order, each schedule once. */
export function ranked(schedules: readonly Schedule[], most: number): Schedule[] {
  const seen = new Set<number>();
  const kept: Schedule[] = [];
  for (const schedule of [...schedules].sort(compareSchedules)) {
    if (seen.has(schedule.hash)) continue;
    seen.add(schedule.hash);
    kept.push(schedule);
    if (kept.length === most) break;
  }
  return kept;
}
