import type { Condition } from "@buildproof/prerequisites";
import type { CatalogueState } from "./catalogue-state";
import type { ContentOf } from "./part-content";

/**
 * Where the catalogue points at what is not there: a rule or package at an item that is gone, an item at an
 * operation. One sentence each; empty when all is well.
 */
export function dangling({ parts }: CatalogueState, models: ReadonlySet<string>): readonly string[] {
  const points: string[] = [];
  const look = (
    whose: string,
    what: string,
    codes: readonly string[],
    known: { has(code: string): boolean },
  ) => {
    for (const code of codes) if (!known.has(code)) points.push(`${whose} names the ${what} ${code}.`);
  };
  for (const { name, fits, operations } of parts.item.values()) {
    look(`Item “${name}”`, "vehicle model", fits, models);
    look(`Item “${name}”`, "operation", operations, parts.operation);
  }
  for (const { name, items } of parts.group.values()) look(`Group “${name}”`, "item", items, parts.item);
  for (const [code, rule] of parts.rule) {
    look(`Rule ${code}`, "vehicle model", rule.models, models);
    look(`Rule ${code}`, "item", itemsOfRule(rule), parts.item);
  }
  for (const { name, models: made, items, choices, options } of parts.package.values()) {
    look(`Package “${name}”`, "vehicle model", made, models);
    look(
      `Package “${name}”`,
      "item",
      [...items, ...choices.flatMap((each) => each.items), ...options],
      parts.item,
    );
  }
  for (const { name, access } of parts.operation.values())
    look(`Operation “${name}”`, "access work", access, parts.access);
  for (const { name, needs } of parts.access.values())
    look(`Access work “${name}”`, "access work", needs, parts.access);
  return points;
}

/** Codes of every item that a rule speaks of. */
export function itemsOfRule(rule: ContentOf<"rule">): readonly string[] {
  if (rule.kind === "capacity")
    return [...new Set([...Object.keys(rule.supply), ...Object.keys(rule.demand)])];
  return [...new Set([...(rule.when ? itemsOf(rule.when) : []), ...itemsOf(rule.then)])];
}

/** Codes of every item that a condition names. */
export function itemsOf(condition: Condition): readonly string[] {
  if ("item" in condition) return [condition.item];
  if ("all" in condition) return condition.all.flatMap(itemsOf);
  if ("any" in condition) return condition.any.flatMap(itemsOf);
  if ("not" in condition) return itemsOf(condition.not);
  return [];
}
