import type { Transaction } from "@buildproof/database";
import { minorUnits } from "@buildproof/units";
import type {
  Catalogue,
  CatalogueGroup,
  CatalogueItem,
  CataloguePackage,
  CatalogueRule,
  Rate,
} from "./catalogue-rows";
import { storedAmounts, storedCondition, storedPromise } from "./stored-catalogue";
import { asSystemCode } from "./systems";

/** The workshop's whole catalogue: a few hundred rows, read afresh so that a price change shows at once. */
export async function readCatalogue(tx: Transaction): Promise<Catalogue> {
  const byCode = { orderBy: { code: "asc" as const } };
  const byPosition = { orderBy: [{ position: "asc" as const }, { code: "asc" as const }] };
  const items = await tx.item.findMany(byPosition);
  const access = await tx.accessWork.findMany(byCode);
  const operations = await tx.operation.findMany(byPosition);
  const groups = await tx.itemGroup.findMany(byPosition);
  const rules = await tx.rule.findMany(byPosition);
  const packages = await tx.package.findMany(byPosition);
  return {
    items: items.map(itemOf),
    access: access.map(({ code, name, hours, rate, needs }) => ({
      code,
      name,
      hours: hours.toString(),
      rate: rateOf(rate),
      needs,
    })),
    operations: operations.map(({ code, name, hours, rate, access: uses, stage, place }) => ({
      code,
      name,
      hours: hours.toString(),
      rate: rateOf(rate),
      access: uses,
      stage,
      place,
    })),
    groups: groups.map(groupOf),
    rules: rules.map(ruleOf),
    packages: packages.map(packageOf),
  };
}

type Rows = {
  readonly item: Awaited<ReturnType<Transaction["item"]["findFirstOrThrow"]>>;
  readonly group: Awaited<ReturnType<Transaction["itemGroup"]["findFirstOrThrow"]>>;
  readonly rule: Awaited<ReturnType<Transaction["rule"]["findFirstOrThrow"]>>;
  readonly package: Awaited<ReturnType<Transaction["package"]["findFirstOrThrow"]>>;
};

function itemOf(row: Rows["item"]): CatalogueItem {
  const { workshopId: _, position: __, warrantyMonths: ___, priceMinor, costMinor, system, ...rest } = row;
  return {
    ...rest,
    system: asSystemCode(system),
    priceMinor: minorUnits(priceMinor),
    costMinor: minorUnits(costMinor),
  };
}

function groupOf({ code, name, pick, items }: Rows["group"]): CatalogueGroup {
  const picks = {
    atMostOne: "at-most-one",
    exactlyOne: "exactly-one",
    atLeastOne: "at-least-one",
  } as const;
  return { code, name, pick: picks[pick], items };
}

function ruleOf(row: Rows["rule"]): CatalogueRule {
  const { code, because, source, safety, models, kind } = row;
  const head = { code, because, source, safety, models };
  if (kind !== "capacity") {
    const then = storedCondition.parse(row.then);
    return { ...head, kind, when: row.when === null ? null : storedCondition.parse(row.when), then };
  }
  return {
    ...head,
    kind,
    quantity: row.quantity ?? "",
    unit: row.unit ?? "",
    link: row.link ?? "",
    baseFact: row.baseFact ?? "",
    supply: storedAmounts.parse(row.supply ?? {}),
    demand: storedAmounts.parse(row.demand ?? {}),
    reservePct: row.reservePct ?? 0,
  };
}

function packageOf(row: Rows["package"]): CataloguePackage {
  const { code, name, outcome, models, items, promise, assumptions, exclusions, cautions } = row;
  return {
    code,
    name,
    outcome,
    models,
    items,
    promise: promise === null ? null : storedPromise.parse(promise),
    assumptions,
    exclusions,
    cautions,
  };
}

function rateOf(stored: string): Rate {
  return stored === "dyno" ? "dyno" : "workshop";
}
