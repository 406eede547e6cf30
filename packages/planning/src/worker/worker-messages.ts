import type { PlanModel } from "../model/plan-question";
import type { Plan, PlanProgress } from "../plan";

export type WorkerTask = {
  readonly model: PlanModel;
  readonly schedules: number;
  readonly seed: number;
  readonly withinMs: number;
  /** Set to 1 by the one who asked, to have the best so far at once. */
  readonly stop: Int32Array;
};

export type WorkerAnswer =
  | { readonly kind: "improved"; readonly progress: PlanProgress }
  | { readonly kind: "planned"; readonly plan: Plan }
  | { readonly kind: "impossible"; readonly code: string; readonly message: string; readonly path: string };
