import { ImpossibleInputError } from "@buildproof/units";
import type { PlanTask } from "../model/plan-question";
import { randomFrom } from "../search/random";
import { handOverOf, type PromiseQuestion, placed, placingOf } from "./promise";

/** A first of its kind takes 1.6 times its estimate: common practice, no source; learn it from the clocks. */
const FIRST_OF_KIND = 1.6;
/** Shares of the estimate that a known task takes at best and at worst: common practice, no source. */
const BEST = 0.85;
const WORST = 1.5;
/** Boosted builds that come back for calibration: about a third, common practice, no source. */
const SECOND_VISIT = 1 / 3;

export type UncertainTask = PlanTask & {
  /** Whether the workshop does it for the first time. */
  readonly isFirstOfKind?: boolean | undefined;
  /** Only part of the job when it comes back; the rest waits for it only then. */
  readonly isSecondVisit?: boolean | undefined;
};

export type UncertainJob = Omit<PromiseQuestion, "tasks"> & { readonly tasks: readonly UncertainTask[] };

export type PercentileOptions = {
  /** Percent of the tries that keep the promise; 80 unless said. */
  readonly percentile?: number | undefined;
  readonly tries?: number | undefined;
  readonly seed?: number | undefined;
  /** Share of jobs that have their second visit. */
  readonly secondVisitShare?: number | undefined;
};

export type PercentilePromise = {
  readonly percentile: number;
  /** The instant by which so many of the tries were done. */
  readonly handOver: number;
  readonly earliest: number;
  readonly median: number;
  readonly latest: number;
  readonly tries: number;
};

/**
 * A hand-over that a stated share of tries keeps: each try draws every duration from a triangle about its estimate,
 * decides whether there is a second visit, and places the job beside what is booked.
 *
 * @throws ImpossibleInputError a percentile outside 1 to 99, and what a promise refuses
 */
export function percentilePromise(job: UncertainJob, options: PercentileOptions = {}): PercentilePromise {
  const { percentile = 80, tries = 200, seed = 1, secondVisitShare = SECOND_VISIT } = options;
  if (!(percentile >= 1 && percentile <= 99)) {
    throw new ImpossibleInputError(
      "invalid-percentile",
      "Promise a percentile from 1 to 99, such as 80.",
      "percentile",
    );
  }
  const random = randomFrom(seed);
  const visits = new Set(job.tasks.filter((task) => task.isSecondVisit).map(({ id }) => id));
  const planned = [placingOf(job), placingOf(withoutTasks(job, visits))] as const;
  const kept = [job.tasks, job.tasks.filter(({ id }) => !visits.has(id))] as const;
  const ends = Array.from({ length: tries }, () => {
    const which = visits.size > 0 && random() < secondVisitShare ? 0 : 1;
    const placing = planned[which];
    for (const [at, task] of kept[which].entries()) {
      // What may not pause is stopped when the longest opening ends, and the rest is another visit.
      const longest = task.splittable ? undefined : placing.problem.calendar[at]?.longestSpan;
      placing.problem.duration[at] = Math.min(drawn(task, random), longest ?? Number.POSITIVE_INFINITY);
    }
    const found = placed(placing);
    return found ? handOverOf(found.end) : Number.POSITIVE_INFINITY;
  }).sort((a, b) => a - b);
  const at = (percent: number): number => ends[Math.max(0, Math.ceil((percent / 100) * tries) - 1)] ?? 0;
  if (at(percentile) === Number.POSITIVE_INFINITY) {
    throw new ImpossibleInputError(
      "no-room",
      "Too few tries find a place beside what is booked: open the job's resources longer.",
      "tasks",
    );
  }
  return { percentile, handOver: at(percentile), earliest: at(0), median: at(50), latest: at(100), tries };
}

/** A whole number of units from a triangle between best and worst about the estimate. */
function drawn({ duration, isFirstOfKind = false }: UncertainTask, random: () => number): number {
  const share = random();
  const turn = (1 - BEST) / (WORST - BEST);
  const factor =
    share < turn
      ? BEST + Math.sqrt(share * (WORST - BEST) * (1 - BEST))
      : WORST - Math.sqrt((1 - share) * (WORST - BEST) * (WORST - 1));
  return Math.round(duration * factor * (isFirstOfKind ? FIRST_OF_KIND : 1));
}

/** The job as it is without some of its tasks: what waited for one of them waits for what that one waited for. */
function withoutTasks(job: UncertainJob, left: ReadonlySet<string>): PromiseQuestion {
  const byId = new Map(job.tasks.map((task) => [task.id, task]));
  const through = (ids: NonNullable<PlanTask["after"]>): NonNullable<PlanTask["after"]> =>
    ids.flatMap((before) => (left.has(before.task) ? through(byId.get(before.task)?.after ?? []) : [before]));
  return {
    ...job,
    tasks: job.tasks
      .filter(({ id }) => !left.has(id))
      .map((task) => ({ ...task, after: through(task.after ?? []) })),
    holds: (job.holds ?? []).filter(({ from, to }) => !left.has(from) && !left.has(to)),
  };
}
