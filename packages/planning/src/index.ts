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
