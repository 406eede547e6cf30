import { ImpossibleInputError } from "@buildproof/units";
import { namedItems } from "./condition";
import type { Model, Rule } from "./model";

/** Every id once over items, groups and rules; every item that is named is in the catalogue. */
export function checkIds(model: Model): void {
  const seen = new Set<string>();
  const once = (entries: readonly { readonly id: string }[], list: string): void => {
    entries.forEach(({ id }, index) => {
      if (seen.has(id)) throw doubled(id, `${list}[${index}].id`);
      seen.add(id);
    });
  };
  once(model.items, "items");
  once(model.groups ?? [], "groups");
  once(model.rules ?? [], "rules");

  const items = new Set(model.items.map(({ id }) => id));
  (model.groups ?? []).forEach((group, index) => {
    checkItemList(group.items, items, `groups[${index}].items`);
  });
  (model.rules ?? []).forEach((rule, index) => {
    for (const [id, path] of itemsNamedBy(rule)) {
      if (!items.has(id)) throw unknown(id, `rules[${index}].${path}`);
    }
  });
}

/** What is chosen or barred is in the catalogue, once, and not both. */
export function checkChoice(
  items: ReadonlySet<string>,
  chosen: readonly string[],
  barred: readonly string[],
): void {
  checkItemList(chosen, items, "chosen");
  checkItemList(barred, items, "barred");
  const isChosen = new Set(chosen);
  barred.forEach((id, index) => {
    if (!isChosen.has(id)) return;
    throw new ImpossibleInputError(
      "chosen-and-barred",
      `Item "${id}" is chosen and barred at once: remove it from one of the two.`,
      `barred[${index}]`,
    );
  });
}

function checkItemList(ids: readonly string[], items: ReadonlySet<string>, list: string): void {
  const seen = new Set<string>();
  ids.forEach((id, index) => {
    if (!items.has(id)) throw unknown(id, `${list}[${index}]`);
    if (seen.has(id)) throw doubled(id, `${list}[${index}]`);
    seen.add(id);
  });
}

function itemsNamedBy(rule: Rule): readonly (readonly [id: string, path: string])[] {
  if (rule.kind === "capacity") {
    return [
      ...Object.keys(rule.supply ?? {}).map((id) => [id, "supply"] as const),
      ...Object.keys(rule.demand ?? {}).map((id) => [id, "demand"] as const),
    ];
  }
  return [
    ...namedItems(rule.when).map((id) => [id, "when"] as const),
    ...namedItems(rule.then).map((id) => [id, "then"] as const),
  ];
}

function unknown(id: string, path: string): ImpossibleInputError {
  return new ImpossibleInputError(
    "unknown-id",
    `There is no item "${id}": add it to items or correct the id.`,
    path,
  );
}

function doubled(id: string, path: string): ImpossibleInputError {
  return new ImpossibleInputError(
    "doubled-id",
    `The id "${id}" is used twice: give each entry an id of its own.`,
    path,
  );
}
