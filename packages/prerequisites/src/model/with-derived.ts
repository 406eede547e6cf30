// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { checkDerived, type DerivedItem } from "./derived-item";
import type { Condition, Model, Rule } from "./model";

/**
 * A model with its derived items as items at the end, and two rules for each that make it stand and fall with what
 * it comes from. To be checked with `derivedFrom` beside the chosen.
 *
 * @throws ImpossibleInputError for an unknown id, or a derived item that comes from itself.
 */
export function withDerived(model: Model, derived: readonly DerivedItem[]): Model {
  if (derived.length === 0) return model;
  checkDerived(
    model.items.map(({ id }) => id),
    derived,
  );
  return {
    items: [...model.items, ...derived.map(({ from: _, ...item }) => item)],
    groups: model.groups,
    rules: [...(model.rules ?? []), ...derived.flatMap(rulesOf)],
  };
}

function rulesOf({ id, from }: DerivedItem): readonly Rule[] {
  const named = (ids: readonly string[]): readonly Condition[] => ids.map((item) => ({ item }));
  const sources: Condition = "any" in from ? { any: named(from.any) } : { all: named(from.all) };
  const own: Condition = { item: id };
  return [
    { id: `${id} comes`, kind: "needs", when: sources, then: own },
    { id: `${id} goes`, kind: "needs", when: own, then: sources },
  ];
}
