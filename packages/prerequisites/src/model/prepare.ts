import { checkIds } from "./check-ids";
import { type Constraint, groupConstraint, ruleConstraint } from "./constraint";
import type { Model } from "./model";

/** Groups first, then rules, each in the order of the model. */
export type PreparedModel = { readonly model: Model; readonly constraints: readonly Constraint[] };

const prepared = new WeakMap<Model, PreparedModel>();

/**
 * Checks the ids of a model and reads its decimals. A model is a value: the work is done once per
 * object, so that the build sheet can ask at every choice.
 */
export function prepare(model: Model): PreparedModel {
  const known = prepared.get(model);
  if (known) return known;
  checkIds(model);
  const fresh: PreparedModel = {
    model,
    constraints: [...(model.groups ?? []).map(groupConstraint), ...(model.rules ?? []).map(ruleConstraint)],
  };
  prepared.set(model, fresh);
  return fresh;
}
