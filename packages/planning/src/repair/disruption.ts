import type { PlanModel, PlanResource, Span } from "../model/plan-question";
import { mergedSpans } from "../model/spans";

/** What went otherwise than planned. */
export type Disruption =
  | { readonly kind: "part-late"; readonly task: string; readonly release: number }
  | { readonly kind: "overrun"; readonly task: string; readonly duration: number }
  | { readonly kind: "away"; readonly resource: string; readonly from: number; readonly to: number };

/** Longer than any plan, in any unit that is sensible. */
const FOR_EVER = 2 ** 44;

/** The question as it is now. Whoever is away is so from now on; a resource of several units is away with all of them. */
export function disrupted(model: PlanModel, disruptions: readonly Disruption[], now: number): PlanModel {
  return disruptions.reduce((changed, disruption) => disruptedBy(changed, disruption, now), model);
}

function disruptedBy(model: PlanModel, disruption: Disruption, now: number): PlanModel {
  if (disruption.kind === "away") {
    return {
      ...model,
      resources: model.resources.map((resource) =>
        resource.id === disruption.resource
          ? closedFor(resource, Math.max(now, disruption.from), disruption.to)
          : resource,
      ),
    };
  }
  return {
    ...model,
    tasks: model.tasks.map((task) => {
      if (task.id !== disruption.task) return task;
      return disruption.kind === "part-late"
        ? { ...task, release: Math.max(task.release ?? 0, disruption.release) }
        : { ...task, duration: disruption.duration };
    }),
  };
}

function closedFor(resource: PlanResource, from: number, to: number): PlanResource {
  const spans = mergedSpans(resource.open ?? [[0, FOR_EVER]]);
  return {
    ...resource,
    open: spans.flatMap(([opens, closes]): Span[] => {
      const before: Span = [opens, Math.min(closes, from)];
      const after: Span = [Math.max(opens, to), closes];
      return [before, after].filter(([begin, end]) => begin < end);
    }),
  };
}
