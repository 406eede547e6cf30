import type { Model, Rule } from "@buildproof/prerequisites";
import type { Site } from "../core/site";
import { amountOn } from "./capacity-amount";
import type { Catalogue, CatalogueRule } from "./catalogue-rows";
import { ledgerOf } from "./ledger";

/**
 * The catalogue as the prerequisite checks take it, for one model of vehicle. Price and hours of an item are
 * those of choosing it alone, its labour included: they put fixes in order; what a fix really adds is worked
 * out from the whole build, where access work is shared.
 */
export function prerequisiteModel(
  catalogue: Catalogue,
  site: Site,
  modelCode: string,
  facts: Readonly<Record<string, number | string>>,
): Model {
  return {
    items: catalogue.items.map((item) => {
      const alone = ledgerOf(catalogue, site, [{ code: item.code, quantity: 1 }]);
      return {
        id: item.code,
        price: alone.total.netMinor,
        hours: alone.labourHours,
        leadDays: item.inStock > 0 ? 0 : item.leadDays,
      };
    }),
    groups: catalogue.groups.map(({ code, pick, items }) => ({ id: code, pick, items })),
    rules: rulesFor(catalogue, modelCode).map((rule) => asRule(rule, facts)),
  };
}

/** The rules that concern a model of vehicle. */
export function rulesFor(catalogue: Catalogue, modelCode: string): readonly CatalogueRule[] {
  return catalogue.rules.filter(({ models }) => models.length === 0 || models.includes(modelCode));
}

/** Codes of the items that do not fit a model of vehicle, or are no longer sold. */
export function notFitting(catalogue: Catalogue, modelCode: string): readonly string[] {
  return catalogue.items
    .filter(({ fits, retired }) => retired || (fits.length > 0 && !fits.includes(modelCode)))
    .map(({ code }) => code);
}

/** A stored rule as the checker takes it, its base figure read from the vehicle. */
export function asRule(rule: CatalogueRule, facts: Readonly<Record<string, number | string>>): Rule {
  const { code: id, because } = rule;
  if (rule.kind !== "capacity") {
    const { kind, when, then } = rule;
    return when ? { id, because, kind, when, then } : { id, because, kind, then };
  }
  const { kind, quantity, reservePct } = rule;
  const onVehicle = (amounts: typeof rule.supply) =>
    Object.fromEntries(Object.entries(amounts).map(([code, amount]) => [code, amountOn(facts, amount)]));
  return {
    id,
    because,
    kind,
    quantity,
    supply: onVehicle(rule.supply),
    demand: onVehicle(rule.demand),
    reservePct,
    base: facts[rule.baseFact] ?? 0,
  };
}
