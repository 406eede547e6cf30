import { headsAndTails } from "../bound/heads-and-tails";
import type { Problem } from "../model/problem";
import { rowOf } from "../model/rows";

/**
 * Latest finish of each task: what its own due date and those of its successors leave, or where nothing is due, the end of
 * the critical path. Small comes first; the best of the simple rules on published sets (Kolisch 1996).
 */
export function latestFinishes(problem: Problem): Float64Array {
  const { headEnd } = headsAndTails(problem);
  const path = headEnd.reduce((latest, end) => Math.max(latest, end), 0);
  const latest = problem.due.map((due) =>
    problem.objective === "makespan" || due === Number.POSITIVE_INFINITY ? path : due,
  );
  for (const task of [...problem.order].reverse()) {
    for (const [next, lag] of rowOf(problem.after, task)) {
      const start = (latest[next] ?? 0) - (problem.duration[next] ?? 0) - lag;
      latest[task] = Math.min(latest[task] ?? 0, start);
    }
  }
  return latest;
}

/** For weighted lateness where little can be on time: work for each unit of weight, the weight of what waits for it included. */
export function workPerWeight(problem: Problem): Float64Array {
  const { size, order, after, due, weight, duration } = problem;
  const waiting = new Float64Array(size);
  for (const task of [...order].reverse()) {
    const own = due[task] === Number.POSITIVE_INFINITY ? 0 : (weight[task] ?? 0);
    waiting[task] = rowOf(after, task).reduce((most, [next]) => Math.max(most, waiting[next] ?? 0), own);
  }
  return waiting.map((sum, task) => (1_000 * (duration[task] ?? 0)) / Math.max(sum, 0.001));
}
