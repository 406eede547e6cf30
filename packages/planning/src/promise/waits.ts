import type { Calendar } from "../model/calendar";
import type { Hold, PlanTask } from "../model/plan-question";
import type { Problem } from "../model/problem";
import { rowOf } from "../model/rows";
import type { Decoder } from "../schedule/decoder";

/** Time that a job loses before a task, and to what: parts not there, closed hours, or a resource that others have. */
export type Wait = {
  readonly task: string;
  readonly for: "release" | "hours" | "resource";
  /** The resource that is taken or closed. */
  readonly resource: string | null;
  readonly from: number;
  readonly until: number;
};

type Named = {
  readonly resources: readonly { readonly id: string }[];
  readonly tasks: readonly PlanTask[];
  readonly holds?: readonly Hold[] | undefined;
};

/** From the last end back along what each task waited for, longest wait first. */
export function waitsOf(problem: Problem, board: Decoder, named: Named): readonly Wait[] {
  const { end, start } = board;
  const waits: Wait[] = [];
  let task = end.indexOf(end.reduce((last, at) => Math.max(last, at), 0));
  for (let steps = 0; steps <= problem.size; steps += 1) {
    const id = named.tasks[task]?.id ?? "";
    const [earlier, ready] = latestBefore(problem, end, task);
    const release = problem.release[task] ?? 0;
    const since = Math.max(ready, 0);
    if (release > since)
      waits.push({ task: id, for: "release", resource: null, from: since, until: release });
    const able = Math.max(release, since);
    const begun = start[task] ?? 0;
    if (begun > able)
      waits.push({ task: id, ...reason(problem, board, named, task, able), from: able, until: begun });
    if (earlier === null) break;
    task = earlier;
  }
  return waits.sort((a, b) => b.until - b.from - (a.until - a.from));
}

/** The predecessor that lets a task begin last, and when. */
function latestBefore(problem: Problem, end: Float64Array, task: number): readonly [number | null, number] {
  return rowOf(problem.before, task).reduce<readonly [number | null, number]>(
    (latest, [earlier, lag]) => {
      const ready = (end[earlier] ?? 0) + lag;
      return ready > latest[1] ? [earlier, ready] : latest;
    },
    [null, Number.NEGATIVE_INFINITY],
  );
}

/** The one of a task's resources that alone would keep it longest; its hold's when none of its own does. */
function reason(
  problem: Problem,
  board: Decoder,
  { resources, holds = [], tasks }: Named,
  task: number,
  able: number,
): Pick<Wait, "for" | "resource"> {
  const id = (resource: number): string | null => resources[resource]?.id ?? null;
  const length = problem.duration[task] ?? 0;
  const uses = rowOf(problem.uses, task);
  const opens = startIn(problem.calendar[task] ?? null, able, length, problem.isSplittable[task] === true);
  if (opens >= (board.start[task] ?? 0)) {
    const closed = uses
      .map(([resource]) => resource)
      .find((resource) => {
        const hours = problem.hours[resource] ?? null;
        return hours && startIn(hours, able, length, problem.isSplittable[task] === true) > able;
      });
    return { for: "hours", resource: closed === undefined ? null : id(closed) };
  }
  let longest: readonly [number, number] = [-1, opens];
  for (const [resource, units] of uses) {
    const free = board.freeFrom(resource, opens, Math.max(1, length), units);
    if (free > longest[1]) longest = [resource, free];
  }
  if (longest[0] >= 0) return { for: "resource", resource: id(longest[0]) };
  const held = holds.find(({ from }) => from === tasks[task]?.id);
  return { for: "resource", resource: held?.resource ?? (uses[0] ? id(uses[0][0]) : null) };
}

function startIn(hours: Calendar | null, from: number, length: number, isSplittable: boolean): number {
  const place = { start: from, end: from };
  return !hours || hours.earliest(from, length, isSplittable, place) ? place.start : Number.POSITIVE_INFINITY;
}
