import { ImpossibleInputError } from "@buildproof/units";
import type { Hold, PlanResource, PlanTask } from "../model/plan-question";
import { prepare } from "../model/prepare";
import type { Problem } from "../model/problem";
import { Decoder, type Occupied } from "../schedule/decoder";
import { latestFinishes } from "../search/priorities";
import { type Wait, waitsOf } from "./waits";

/** Units of a resource that something else has for a time. */
export type Booked = {
  readonly resource: string;
  readonly from: number;
  readonly to: number;
  readonly units?: number | undefined;
};

/** A job that is not booked yet, and everything that is. */
export type PromiseQuestion = {
  readonly resources: readonly PlanResource[];
  readonly booked: readonly Booked[];
  readonly tasks: readonly PlanTask[];
  readonly holds?: readonly Hold[] | undefined;
};

export type EarliestPromise = {
  readonly start: Readonly<Record<string, number>>;
  readonly end: Readonly<Record<string, number>>;
  /** First start and last end of the job. */
  readonly begins: number;
  readonly handOver: number;
  /** What the last end waited for on its way, longest first. */
  readonly waits: readonly Wait[];
};

/** A job ready to be placed beside what is booked, over and over: boards with the bookings on them, and a list for each. */
export type Placing = {
  readonly problem: Problem;
  readonly ways: readonly { readonly board: Decoder; readonly list: readonly number[] }[];
};

/**
 * The earliest hand-over of a job when nothing that is booked moves.
 * @throws ImpossibleInputError what can never be planned, and a booking of more than there is
 */
export function earliestPromise(question: PromiseQuestion): EarliestPromise {
  const placing = placingOf(question);
  const { problem } = placing;
  const best = placed(placing);
  if (!best) {
    throw new ImpossibleInputError(
      "no-room",
      "The job finds no place beside what is booked: open its resources longer.",
      "tasks",
    );
  }
  const { start, end } = best;
  const byId = (times: Float64Array): Readonly<Record<string, number>> =>
    Object.fromEntries(question.tasks.map(({ id }, at) => [id, times[at] ?? 0]));
  return {
    start: byId(start),
    end: byId(end),
    begins: start.reduce((first, at) => Math.min(first, at), Number.POSITIVE_INFINITY),
    handOver: handOverOf(end),
    waits: problem.size === 0 ? [] : waitsOf(problem, best, question),
  };
}

export function placingOf({ resources, booked, tasks, holds }: PromiseQuestion): Placing {
  const problem = prepare({ resources, tasks, holds });
  const index = new Map(resources.map(({ id }, at) => [id, at]));
  const occupied = booked.map(({ resource, from, to, units = 1 }, at): Occupied => {
    const found = index.get(resource);
    if (found !== undefined) return { resource: found, from, to, units };
    throw new ImpossibleInputError(
      "unknown-id",
      `There is no resource "${resource}": add it or correct the id.`,
      `booked[${at}].resource`,
    );
  });
  const rule = latestFinishes(problem);
  const rank = new Map(problem.order.map((task, at) => [task, at]));
  const byRule = [...problem.order].sort(
    (a, b) => (rule[a] ?? 0) - (rule[b] ?? 0) || (rank.get(a) ?? 0) - (rank.get(b) ?? 0),
  );
  return {
    problem,
    ways: [byRule, problem.order].map((list) => ({ board: new Decoder(problem, occupied), list })),
  };
}

/** The earliest of the ways, or null when none of them finds a place. */
export function placed({ ways }: Placing): Decoder | null {
  let best: Decoder | null = null;
  for (const { board, list } of ways) {
    board.decode(list);
    if (board.misfits > 0) continue;
    if (!best || handOverOf(board.end) < handOverOf(best.end)) best = board;
  }
  return best;
}

export function handOverOf(end: Float64Array): number {
  return end.reduce((last, at) => Math.max(last, at), 0);
}
