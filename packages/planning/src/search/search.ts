import { mirror } from "../model/mirror";
import type { Problem } from "../model/problem";
import { mirroredCost, objectiveOf } from "./costs";
import { Direction } from "./direction";
import { randomFrom } from "./random";
import type { Schedule } from "./schedule";

export type SearchLimits = {
  /** Passes over the tasks, each counted. */
  readonly schedules: number;
  readonly seed: number;
  /** Asked before every pass. */
  readonly stopped: () => boolean;
  readonly improved: (best: Schedule, schedules: number) => void;
};

/** What the parts of a search share: both directions, the chance, the best so far and the count of passes. */
export class Search {
  readonly forward: Direction;
  readonly backward: Direction;
  readonly random: () => number;
  best: Schedule | null = null;
  schedules = 0;
  /** Mirrored time 0 lies here. */
  readonly #horizon: number;

  constructor(
    readonly problem: Problem,
    readonly bound: number,
    readonly limits: SearchLimits,
  ) {
    this.random = randomFrom(limits.seed);
    this.#horizon = horizonOf(problem);
    this.forward = new Direction(problem, objectiveOf(problem));
    const made = () => this.makespan;
    this.backward = new Direction(
      mirror(problem, this.#horizon),
      mirroredCost(problem.release, this.#horizon, made),
    );
    this.backward.decoder.floor = new Float64Array(problem.size);
  }

  /** The makespan that backward schedules are made for. */
  makespan = 0;

  get isOver(): boolean {
    return (
      (this.best !== null && this.best.cost <= this.bound) ||
      this.schedules >= this.limits.schedules ||
      (this.schedules > 0 && this.limits.stopped())
    );
  }

  /** Counts a pass, and keeps it when it is forwards and the best so far. */
  count(schedule: Schedule, direction: Direction): Schedule {
    this.schedules += 1;
    if (direction === this.forward && (this.best === null || schedule.cost < this.best.cost)) {
      this.best = schedule;
      this.limits.improved(schedule, this.schedules);
    }
    return schedule;
  }

  /** Lets backward schedules end where this one does, a late task no later than it is. */
  aim({ end }: Schedule): void {
    const { floor } = this.backward.decoder;
    const { due, objective } = this.problem;
    this.makespan = end.reduce((latest, at) => Math.max(latest, at), 0);
    for (let task = 0; task < floor.length; task += 1) {
      const allowed = objective === "makespan" ? this.makespan : Math.max(end[task] ?? 0, due[task] ?? 0);
      floor[task] = this.#horizon - Math.min(this.makespan, allowed);
    }
  }

  /** The tasks by descending end, each as late as the rest allows: one pass of justification. */
  justifyRight(schedule: Schedule): Schedule {
    this.aim(schedule);
    return this.count(this.backward.decode(this.backward.listBy(schedule.end)), this.backward);
  }

  /** The tasks of a backward schedule by ascending start, each as early as the rest allows. */
  justifyLeft(schedule: Schedule): Schedule {
    return this.count(this.forward.decode(this.forward.listBy(schedule.end)), this.forward);
  }
}

/** An instant by which everything could be done, whatever waits for whatever. */
function horizonOf({ duration, release, fixed, after, hours, capacity }: Problem): number {
  const settled = fixed.reduce(
    (latest, start) => (Number.isNaN(start) ? latest : Math.max(latest, start)),
    0,
  );
  const lags = after.amount.reduce((sum, lag) => sum + lag, 0);
  const work = duration.reduce((sum, length) => sum + length, 0);
  const open = capacity.map((_, resource) => hours[resource]?.spans.at(-1)?.[1] ?? 0);
  return (
    Math.max(
      settled,
      ...open,
      release.reduce((a, b) => Math.max(a, b), 0),
    ) +
    work +
    lags
  );
}
