import { lowerBound } from "./bound/lower-bound";
import { checkSettled } from "./model/check-settled";
import type { PlanModel } from "./model/plan-question";
import { prepare } from "./model/prepare";
import { isMisfit } from "./search/direction";
import { evolve } from "./search/evolve";
import { noRoom } from "./search/no-room";
import { Search } from "./search/search";

/** A good plan so far: the objective, what no plan can go below, and the share between them. */
export type PlanProgress = {
  readonly objective: number;
  readonly lowerBound: number;
  /** (objective − bound) / objective; 0 when it is proven. */
  readonly gap: number;
  readonly schedules: number;
};

export type PlanOptions = {
  /** Passes over the tasks; 5,000 unless said. */
  readonly schedules?: number | undefined;
  readonly seed?: number | undefined;
  /** Asked before every pass but the first; true ends the search with the best so far. */
  readonly stopped?: (() => boolean) | undefined;
  /** Told of every better plan. */
  readonly improved?: ((progress: PlanProgress) => void) | undefined;
};

export type Plan = {
  readonly start: Readonly<Record<string, number>>;
  readonly end: Readonly<Record<string, number>>;
  readonly objective: number;
  readonly lowerBound: number;
  readonly provenOptimal: boolean;
  readonly schedules: number;
};

/**
 * A plan that double-books nothing, as good as so many passes find it. Same question, seed and passes: same plan.
 *
 * @throws ImpossibleInputError what can never be planned, settled starts that break a rule included
 */
export function plan(model: PlanModel, options: PlanOptions = {}): Plan {
  const steps = planInSteps(model, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same, giving way after every few passes, for a caller that shares its thread. */
export function* planInSteps(model: PlanModel, options: PlanOptions = {}): Generator<void, Plan> {
  const { schedules = 5_000, seed = 1, stopped = () => false, improved = () => {} } = options;
  const problem = prepare(model);
  checkSettled(problem, model);
  if (problem.size === 0) return emptyPlan;
  const bound = lowerBound(problem);
  const search = new Search(problem, bound, {
    schedules: Math.max(1, schedules),
    seed,
    stopped,
    improved: ({ cost }, passes) => improved(progress(cost, bound, passes)),
  });
  yield* evolve(search);
  const { best } = search;
  if (!best || isMisfit(best)) throw noRoom(problem, model, best?.end ?? new Float64Array());
  return {
    start: byId(model, best.start),
    end: byId(model, best.end),
    objective: best.cost,
    lowerBound: bound,
    provenOptimal: best.cost <= bound,
    schedules: search.schedules,
  };
}

const emptyPlan: Plan = {
  start: {},
  end: {},
  objective: 0,
  lowerBound: 0,
  provenOptimal: true,
  schedules: 0,
};

function progress(objective: number, bound: number, schedules: number): PlanProgress {
  return {
    objective,
    lowerBound: bound,
    gap: objective === 0 ? 0 : (objective - bound) / objective,
    schedules,
  };
}

function byId({ tasks }: PlanModel, times: Float64Array): Readonly<Record<string, number>> {
  return Object.fromEntries(tasks.map(({ id }, at) => [id, times[at] ?? 0]));
}
