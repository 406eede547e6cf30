export type {
  Hold,
  Objective,
  PlanModel,
  PlanResource,
  PlanTask,
  Predecessor,
  Span,
} from "./model/plan-question";
export { type Plan, type PlanOptions, type PlanProgress, plan, planInSteps } from "./plan";
export {
  type PercentileOptions,
  type PercentilePromise,
  percentilePromise,
  type UncertainJob,
  type UncertainTask,
} from "./promise/percentile-promise";
export { type Booked, type EarliestPromise, earliestPromise, type PromiseQuestion } from "./promise/promise";
export type { Wait } from "./promise/waits";
export type { Disruption } from "./repair/disruption";
export { type Move, type Repair, type RepairOptions, type RepairQuestion, repairs } from "./repair/repair";
