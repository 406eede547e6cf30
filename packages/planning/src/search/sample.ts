import type { Problem } from "../model/problem";
import type { Direction } from "./direction";
import type { Schedule } from "./schedule";

/** Above this many tasks a non-delay pass costs more than it gives. */
const MOST_NON_DELAY = 400;

/**
 * A list or schedule by a rule with regret-based chance (Drexl 1991): of what can come next, each with odds that grow with
 * how much worse the worst would be. Without `random` the rule alone decides.
 */
export type Sampler = { readonly rule: Float64Array; readonly random: (() => number) | null };

/** A schedule of the serial scheme. */
export function sampleSerial(direction: Direction, sampler: Sampler): Schedule {
  const { problem } = direction;
  const waiting = waitingCounts(problem);
  const ready = problem.order.filter((task) => waiting[task] === 0);
  const list: number[] = [];
  while (ready.length > 0) {
    const at = pick(ready, sampler);
    const [task = 0] = ready.splice(at, 1);
    list.push(task);
    for (const next of released(problem, waiting, task)) ready.push(next);
  }
  return direction.decode(list);
}

/** Whether the parallel scheme serves a problem: it knows no holds and nothing settled. */
export function canSampleParallel({ size, clusters, fixed }: Problem): boolean {
  return size <= MOST_NON_DELAY && clusters.length === 0 && fixed.every(Number.isNaN);
}

/** A schedule of the parallel scheme: nothing waits that could begin, so the set may lack the best but has few bad ones. */
export function sampleParallel(direction: Direction, sampler: Sampler): Schedule {
  const { problem, decoder } = direction;
  decoder.decode([]);
  const waiting = waitingCounts(problem);
  const ready = problem.order.filter((task) => waiting[task] === 0);
  const earliest = new Map(ready.map((task) => [task, decoder.readyAt(task)]));
  while (ready.length > 0) {
    let first = Number.POSITIVE_INFINITY;
    for (const task of ready) {
      const start = decoder.earliest(task, earliest.get(task) ?? 0);
      earliest.set(task, start);
      first = Math.min(first, start);
    }
    const now = ready.filter((task) => earliest.get(task) === first);
    const task = now[pick(now, sampler)] ?? 0;
    ready.splice(ready.indexOf(task), 1);
    decoder.placeAt(task, first);
    for (const next of released(problem, waiting, task)) {
      ready.push(next);
      earliest.set(next, decoder.readyAt(next));
    }
  }
  return direction.keep();
}

function waitingCounts({ size, before }: Problem): Int32Array {
  return Int32Array.from(
    { length: size },
    (_, task) => (before.start[task + 1] ?? 0) - (before.start[task] ?? 0),
  );
}

/** Successors that waited for nothing else. */
function released({ after }: Problem, waiting: Int32Array, task: number): readonly number[] {
  const free: number[] = [];
  for (let at = after.start[task] ?? 0; at < (after.start[task + 1] ?? 0); at += 1) {
    const next = after.item[at] ?? 0;
    const left = (waiting[next] ?? 0) - 1;
    waiting[next] = left;
    if (left === 0) free.push(next);
  }
  return free;
}

function pick(tasks: readonly number[], { rule, random }: Sampler): number {
  const values = tasks.map((task) => rule[task] ?? 0);
  if (!random) return values.indexOf(Math.min(...values));
  const worst = Math.max(...values);
  let left = random() * values.reduce((sum, value) => sum + worst - value + 1, 0);
  for (const [at, value] of values.entries()) {
    left -= worst - value + 1;
    if (left <= 0) return at;
  }
  return values.length - 1;
}
