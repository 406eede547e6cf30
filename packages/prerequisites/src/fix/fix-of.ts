import { decimalToNumber, exactDecimal, sumDecimals } from "@buildproof/units";
import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findings-in";
import type { Item } from "../model/model";
import type { PreparedModel } from "../model/prepare";
import { type Situation, withItems } from "../model/situation";
import type { Fix } from "./fix";

/** The price, hours and side effects of adding items. */
export function fixOf(
  ready: PreparedModel,
  before: Situation,
  findingsBefore: readonly Finding[],
  added: ReadonlySet<string>,
): Fix {
  const items = ready.model.items.filter(({ id }) => added.has(id));
  const after = new Map(
    findingsIn(ready, withItems(before, added)).map((finding) => [finding.rule, finding]),
  );
  return {
    add: items.map(({ id }) => id),
    price: total(items, "price"),
    hours: total(items, "hours"),
    leadDays: Math.max(0, ...items.map(({ leadDays }) => Number(leadDays ?? 0))),
    worsens: findingsBefore
      .filter(({ rule, shortBy }) => (after.get(rule)?.shortBy ?? 0) > (shortBy ?? 0))
      .map(({ rule }) => rule),
  };
}

function total(items: readonly Item[], measure: "price" | "hours"): number {
  return decimalToNumber(sumDecimals(items.map((item) => exactDecimal(item[measure] ?? 0))));
}
