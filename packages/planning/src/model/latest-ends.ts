import type { Rows } from "./problem";
import { rowOf } from "./rows";

/** The latest end of each task that its settled successors allow, closed hours left out of account. */
export function latestEnds(
  order: readonly number[],
  after: Rows,
  duration: Float64Array,
  fixed: Float64Array,
): Float64Array {
  const latest = new Float64Array(order.length).fill(Number.POSITIVE_INFINITY);
  for (const task of [...order].reverse()) {
    for (const [next, lag] of rowOf(after, task)) {
      const settled = fixed[next] ?? Number.NaN;
      const start = Number.isNaN(settled) ? (latest[next] ?? 0) - (duration[next] ?? 0) : settled;
      latest[task] = Math.min(latest[task] ?? 0, start - lag);
    }
  }
  return latest;
}
