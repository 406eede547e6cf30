import type { Model, Rule } from "@buildproof/prerequisites";
import { catalogue } from "./catalogue";
import type { Amount, CapacityRule, CatalogueRule, ModelId } from "./types";

/**
 * The catalogue as one vehicle model sees it, in the words of the public calculation `prerequisites-check`.
 * Items of other models stay in, because rules name them; they are barred (see `itemsThatDoNotFit`).
 */
export function prerequisiteModel(modelId: ModelId): Model {
  const facts = factsOf(modelId);
  const ownHours = new Map(catalogue.operations.map((operation) => [operation.id, operation.ownHours]));
  return {
    items: catalogue.items.map((item) => ({
      id: item.id,
      price: item.priceCents,
      hours: tenths(item.operations.map((id) => ownHours.get(id) ?? 0)),
      leadDays: item.leadDays,
    })),
    groups: catalogue.groups.map(({ id, pick, items }) => ({ id, pick, items })),
    rules: catalogue.rules
      .filter((rule) => rule.models.includes(modelId))
      .map((rule) => withBase(rule, facts)),
  };
}

export function itemsThatDoNotFit(modelId: ModelId): readonly string[] {
  return catalogue.items.filter((item) => !item.fits.includes(modelId)).map((item) => item.id);
}

export function factsOf(modelId: ModelId): Readonly<Record<string, number>> {
  const vehicle = catalogue.models.find((model) => model.id === modelId);
  if (vehicle === undefined) throw new RangeError(`No vehicle model ${modelId}.`);
  return vehicle.facts;
}

function withBase(rule: CatalogueRule, facts: Readonly<Record<string, number>>): Rule {
  if (rule.kind !== "capacity") return rule;
  const { id, kind, quantity, reservePct, because } = rule;
  const onVehicle = (amounts: CapacityRule["supply"]) =>
    Object.fromEntries(Object.entries(amounts).map(([item, amount]) => [item, amountOn(facts, amount)]));
  const [supply, demand] = [onVehicle(rule.supply), onVehicle(rule.demand)];
  return { id, kind, quantity, base: facts[rule.baseFact] ?? 0, supply, demand, reservePct, because };
}

function amountOn(facts: Readonly<Record<string, number>>, amount: Amount): number {
  return typeof amount === "number" ? amount : amount.whole - (facts[amount.lessFact] ?? 0);
}

/** Hours are listed in tenths; adding them as tenths keeps 2.4 + 0.7 at 3.1. */
function tenths(hours: readonly number[]): number {
  return hours.reduce((sum, each) => sum + Math.round(each * 10), 0) / 10;
}
