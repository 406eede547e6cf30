import { checkIds } from "./check-ids";
import { type Constraint, groupConstraint, ruleConstraint } from "./constraint";
import type { Model } from "./model";

export type PreparedModel = {
  readonly model: Model;
  /** Groups first, then rules, each in the order of the model. */
  readonly constraints: readonly Constraint[];
  /** By item, those whose answer its selection can change, in the same order, by their place above. */
  readonly concerning: ReadonlyMap<string, readonly number[]>;
  readonly itemIds: ReadonlySet<string>;
};

const prepared = new WeakMap<Model, PreparedModel>();

/**
 * Checks the ids of a model and reads its decimals. A model is a value: the work is done once per
 * object, so that the build sheet can ask at every choice.
 */
export function prepare(model: Model): PreparedModel {
  const known = prepared.get(model);
  if (known) return known;
  checkIds(model);
  const constraints = [
    ...(model.groups ?? []).map(groupConstraint),
    ...(model.rules ?? []).map(ruleConstraint),
  ];
  const concerning = new Map<string, number[]>();
  for (const [at, { concerns }] of constraints.entries()) {
    for (const item of concerns) {
      const others = concerning.get(item);
      if (others) others.push(at);
      else concerning.set(item, [at]);
    }
  }
  const itemIds = new Set(model.items.map(({ id }) => id));
  const fresh: PreparedModel = { model, constraints, concerning, itemIds };
  prepared.set(model, fresh);
  return fresh;
}
