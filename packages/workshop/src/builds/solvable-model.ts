import type { Item, Model, Rule } from "@buildproof/prerequisites";
import { decimalText, exactDecimal, multiplyDecimals } from "@buildproof/units";
import type { Site } from "../core/site";
import type { Catalogue, CatalogueItem, Rate } from "./catalogue-rows";
import { asRule, rulesFor } from "./prerequisite-model";

type Work = { readonly code: string; readonly hours: string; readonly rate: Rate };

/**
 * The catalogue as the search for the best completion takes it: labour stands in items of its own, so that an hour
 * that several items share is paid once, as the ledger pays it. Those items are hidden from everybody (`isWork`).
 */
export function solvableModel(
  catalogue: Catalogue,
  site: Site,
  modelCode: string,
  facts: Readonly<Record<string, number | string>>,
): Model {
  return {
    items: [
      ...catalogue.items.map(itemOf),
      ...catalogue.operations.map((work) => workItem("operation", work, site)),
      ...catalogue.access.map((work) => workItem("access", work, site)),
    ],
    groups: catalogue.groups.map(({ code, pick, items }) => ({ id: code, pick, items })),
    rules: [...rulesFor(catalogue, modelCode).map((rule) => asRule(rule, facts)), ...workRules(catalogue)],
  };
}

/** Whether an id of the solvable model stands for labour. */
export function isWork(id: string): boolean {
  return id.startsWith("operation:") || id.startsWith("access:");
}

function itemOf({ code, priceMinor, inStock, leadDays }: CatalogueItem): Item {
  return { id: code, price: priceMinor, hours: 0, leadDays: inStock > 0 ? 0 : leadDays };
}

function workItem(kind: "operation" | "access", { code, hours, rate }: Work, site: Site): Item {
  const price = multiplyDecimals(exactDecimal(hours), exactDecimal(site.hourRates[rate].priceMinor));
  return { id: `${kind}:${code}`, price: decimalText(price), hours, leadDays: 0 };
}

function workRules({ items, operations, access }: Catalogue): readonly Rule[] {
  const known = new Set([
    ...operations.map(({ code }) => `operation:${code}`),
    ...access.map(({ code }) => `access:${code}`),
  ]);
  const rules = (when: string, wanted: readonly string[]): readonly Rule[] =>
    wanted.filter((id) => known.has(id)).map((id) => needsWork({ item: when }, { item: id }));
  const asAccess = (codes: readonly string[]) => codes.map((code) => `access:${code}`);
  return [
    ...items.flatMap((item) =>
      rules(
        item.code,
        item.operations.map((code) => `operation:${code}`),
      ),
    ),
    ...operations.flatMap((work) => rules(`operation:${work.code}`, asAccess(work.access))),
    ...access.flatMap((work) => rules(`access:${work.code}`, asAccess(work.needs))),
  ];
}

/** Rules of labour carry an arrow in their id, which no rule of the catalogue does. */
function needsWork(when: { readonly item: string }, then: { readonly item: string }): Rule {
  return { id: `${when.item} → ${then.item}`, kind: "needs", when, then };
}
