// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import type { WrittenDecimal } from "@buildproof/units";
import type { Condition, Facts, Item, Model, Rule } from "../model/model";
import { type FactRanges, rising, tellingValues } from "./fact-range";

/** A model whose vehicle varies, as one whose vehicle is fixed: what varies is chosen like an item. */
export type SpreadModel = {
  /** The items of the catalogue first, then one for every value above the lowest that a fact may have. */
  readonly model: Model;
  /** What does not vary, and the lowest of what does. */
  readonly facts: Facts;
  readonly steps: readonly FactStep[];
};

/** While this is selected, the fact is at least the value. */
export type FactStep = { readonly id: string; readonly fact: string; readonly value: WrittenDecimal };

/**
 * "At least" is asked of any step that reaches the threshold, so the steps need no rules among themselves:
 * the highest one selected says what the fact is.
 */
export function spreadFacts(model: Model, ranges: FactRanges): SpreadModel {
  const thresholds = thresholdsOf(model);
  const facts: Record<string, WrittenDecimal> = {};
  const steps: FactStep[] = [];
  const prefix = unusedPrefix(model);
  for (const [fact, range] of Object.entries(ranges)) {
    const [lowest = 0, ...higher] = tellingValues(fact, range, thresholds.get(fact) ?? []);
    facts[fact] = lowest;
    if (!thresholds.has(fact)) continue;
    steps.push(...higher.map((value) => ({ id: `${prefix}${fact} ${value}`, fact, value })));
  }
  const items: readonly Item[] = [...model.items, ...steps.map(({ id }) => ({ id }))];
  const rules = (model.rules ?? []).map((rule) => spreadRule(rule, steps, facts));
  return { model: { ...model, items, rules }, facts, steps };
}

/** The facts of one vehicle in the range, as the selected steps say. */
export function factsOfSteps({ facts, steps }: SpreadModel, selected: ReadonlySet<string>): Facts {
  const told = { ...facts };
  for (const { id, fact, value } of steps) if (selected.has(id)) told[fact] = value;
  return told;
}

export function spreadCondition(condition: Condition, steps: readonly FactStep[], facts: Facts): Condition {
  const spread = (part: Condition): Condition => spreadCondition(part, steps, facts);
  if ("all" in condition) return { all: condition.all.map(spread) };
  if ("any" in condition) return { any: condition.any.map(spread) };
  if ("not" in condition) return { not: spread(condition.not) };
  if ("item" in condition) return condition;
  const { fact, atLeast } = condition;
  const own = steps.filter((step) => step.fact === fact);
  if (own.length === 0 || rising(facts[fact] ?? 0, atLeast) >= 0) return condition;
  return { any: own.filter(({ value }) => rising(value, atLeast) >= 0).map(({ id }) => ({ item: id })) };
}

function spreadRule(rule: Rule, steps: readonly FactStep[], facts: Facts): Rule {
  if (rule.kind === "capacity") return rule;
  const then = spreadCondition(rule.then, steps, facts);
  return rule.when ? { ...rule, when: spreadCondition(rule.when, steps, facts), then } : { ...rule, then };
}

function thresholdsOf(model: Model): ReadonlyMap<string, readonly WrittenDecimal[]> {
  const found = new Map<string, WrittenDecimal[]>();
  const visit = (condition: Condition): void => {
    if ("all" in condition) condition.all.forEach(visit);
    else if ("any" in condition) condition.any.forEach(visit);
    else if ("not" in condition) visit(condition.not);
    else if ("fact" in condition) {
      found.set(condition.fact, [...(found.get(condition.fact) ?? []), condition.atLeast]);
    }
  };
  for (const rule of model.rules ?? []) {
    if (rule.kind === "capacity") continue;
    if (rule.when) visit(rule.when);
    visit(rule.then);
  }
  return found;
}

function unusedPrefix({ items, groups = [], rules = [] }: Model): string {
  const ids = [...items, ...groups, ...rules].map(({ id }) => id);
  let prefix = "fact ";
  while (ids.some((id) => id.startsWith(prefix))) prefix = ` ${prefix}`;
  return prefix;
}
