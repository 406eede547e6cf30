import { ImpossibleInputError } from "@buildproof/units";
import { checkSettled } from "../model/check-settled";
import type { PlanModel } from "../model/plan-question";
import { prepare } from "../model/prepare";
import { plan } from "../plan";
import { Decoder } from "../schedule/decoder";
import { type Disruption, disrupted } from "./disruption";
import { fewestMoves, inOldOrder } from "./keep-places";
import { withBegun } from "./with-begun";

type Times = Readonly<Record<string, number>>;

export type RepairQuestion = {
  readonly model: PlanModel;
  /** Where every task was planned. */
  readonly start: Times;
  readonly now: number;
  readonly disruptions: readonly Disruption[];
};

/** A task's old and new place. */
export type Move = {
  readonly task: string;
  readonly fromStart: number;
  readonly toStart: number;
  readonly fromEnd: number;
  readonly toEnd: number;
};

export type Repair = {
  /** Others keep their place where they can; or all keep their order and wait; or the least late that was found. */
  readonly way: "fewest-moves" | "same-order" | "least-late";
  readonly start: Times;
  readonly end: Times;
  /** Tasks that begin at another time, or end at another. */
  readonly moves: readonly Move[];
  /** Σ weight · lateness over the tasks that are due, before and after. */
  readonly latenessBefore: number;
  readonly lateness: number;
};

export type RepairOptions = {
  /** Passes of the way that searches; 40 unless said. */
  readonly schedules?: number | undefined;
  readonly seed?: number | undefined;
  readonly stopped?: (() => boolean) | undefined;
};

/**
 * Up to three ways to make a plan hold again, those that differ, fewest moves first. What began before `now` stays where it
 * is; nothing else begins before `now`. Without any disruption the answer is one repair that moves nothing.
 *
 * @throws ImpossibleInputError when no way is left
 */
export function repairs(question: RepairQuestion, options: RepairOptions = {}): readonly Repair[] {
  const { model, start, now, disruptions } = question;
  const oldEnd = endsOf(model, start);
  const changed = withBegun(disrupted(model, disruptions, now), model, start, now);
  const problem = prepare(changed);
  checkSettled(problem, changed);
  const old = Float64Array.from(changed.tasks, ({ id }) => start[id] ?? now);
  const repair = (way: Repair["way"], newStart: Times, newEnd: Times): Repair => ({
    way,
    start: newStart,
    end: newEnd,
    moves: movesOf(changed, start, oldEnd, newStart, newEnd),
    latenessBefore: latenessOf(model, oldEnd),
    lateness: latenessOf(model, newEnd),
  });
  const found: Repair[] = [];
  for (const [way, placed] of [
    ["fewest-moves", fewestMoves(problem, old, now)],
    ["same-order", inOldOrder(problem, old, now)],
  ] as const) {
    if (placed) found.push(repair(way, byId(changed, placed.start), byId(changed, placed.end)));
  }
  const best = Math.min(...found.map(({ lateness }) => lateness));
  const searched = best > 0 ? leastLate(changed, now, options) : null;
  if (searched) {
    const made = repair("least-late", searched.start, searched.end);
    if (made.lateness < best) found.push(made);
  }
  if (found.length === 0) {
    throw new ImpossibleInputError(
      "no-room",
      "No way was found to make the plan hold again: open resources longer or free what is fixed.",
      "disruptions",
    );
  }
  return distinct(found).sort((a, b) => a.moves.length - b.moves.length);
}

function leastLate(changed: PlanModel, now: number, options: RepairOptions) {
  const tasks = changed.tasks.map((task) =>
    changed.fixed?.[task.id] === undefined ? { ...task, release: Math.max(now, task.release ?? 0) } : task,
  );
  try {
    return plan({ ...changed, tasks, objective: "weighted-tardiness" }, { schedules: 40, ...options });
  } catch (error) {
    // The other ways may still hold; without any of them the caller is told.
    if (error instanceof ImpossibleInputError) return null;
    throw error;
  }
}

function endsOf(model: PlanModel, start: Times): Times {
  const board = new Decoder(prepare({ ...model, fixed: start }));
  return byId(model, board.end);
}

function byId({ tasks }: PlanModel, times: Float64Array): Times {
  return Object.fromEntries(tasks.map(({ id }, at) => [id, times[at] ?? 0]));
}

function movesOf(
  model: PlanModel,
  start: Times,
  end: Times,
  newStart: Times,
  newEnd: Times,
): readonly Move[] {
  return model.tasks
    .map(({ id }) => ({
      task: id,
      fromStart: start[id] ?? 0,
      toStart: newStart[id] ?? 0,
      fromEnd: end[id] ?? 0,
      toEnd: newEnd[id] ?? 0,
    }))
    .filter(({ fromStart, toStart, fromEnd, toEnd }) => fromStart !== toStart || fromEnd !== toEnd);
}

function latenessOf({ tasks }: PlanModel, end: Times): number {
  return tasks.reduce(
    (sum, { id, due, weight = 1 }) =>
      sum + (due === undefined ? 0 : weight * Math.max(0, (end[id] ?? 0) - due)),
    0,
  );
}

function distinct(found: readonly Repair[]): Repair[] {
  const seen = new Set<string>();
  return found.filter(({ start }) => {
    const key = JSON.stringify(start);
    return !seen.has(key) && seen.add(key);
  });
}
