import type { Transaction } from "@buildproof/database";
import { minorUnits } from "@buildproof/units";
import type { CatalogueState } from "./catalogue-state";
import {
  accessContent,
  type ContentOf,
  groupContent,
  itemContent,
  operationContent,
  packageContent,
  ruleContent,
} from "./part-content";

/** The workshop's whole catalogue: a few hundred rows, read afresh so that a change shows at once. */
export async function readCatalogueState(tx: Transaction): Promise<CatalogueState> {
  const byCode = { orderBy: { code: "asc" as const } };
  const byPosition = { orderBy: [{ position: "asc" as const }, { code: "asc" as const }] };
  const items = await tx.item.findMany(byPosition);
  const groups = await tx.itemGroup.findMany(byPosition);
  const rules = await tx.rule.findMany(byPosition);
  const packages = await tx.package.findMany(byPosition);
  const operations = await tx.operation.findMany(byPosition);
  const access = await tx.accessWork.findMany(byCode);
  return {
    parts: {
      item: byCodeOf(
        items.filter(({ retired }) => !retired),
        itemOf,
      ),
      group: byCodeOf(groups, groupOf),
      rule: byCodeOf(rules, ruleOf),
      package: byCodeOf(packages, packageOf),
      operation: byCodeOf(operations, operationOf),
      access: byCodeOf(access, accessOf),
    },
    retired: byCodeOf(
      items.filter(({ retired }) => retired),
      itemOf,
    ),
    stock: new Map(items.map(({ code, id, inStock }) => [code, { id, inStock }])),
  };
}

type Rows = {
  readonly item: Awaited<ReturnType<Transaction["item"]["findFirstOrThrow"]>>;
  readonly group: Awaited<ReturnType<Transaction["itemGroup"]["findFirstOrThrow"]>>;
  readonly rule: Awaited<ReturnType<Transaction["rule"]["findFirstOrThrow"]>>;
  readonly package: Awaited<ReturnType<Transaction["package"]["findFirstOrThrow"]>>;
  readonly operation: Awaited<ReturnType<Transaction["operation"]["findFirstOrThrow"]>>;
  readonly access: Awaited<ReturnType<Transaction["accessWork"]["findFirstOrThrow"]>>;
};

function byCodeOf<Row extends { readonly code: string }, Content>(
  rows: readonly Row[],
  contentOf: (row: Row) => Content,
): ReadonlyMap<string, Content> {
  return new Map(rows.map((row) => [row.code, contentOf(row)]));
}

function itemOf(row: Rows["item"]): ContentOf<"item"> {
  const { id: _, workshopId: __, code: ___, inStock: ____, retired: _____, ...rest } = row;
  return itemContent.parse({
    ...rest,
    priceMinor: minorUnits(row.priceMinor),
    costMinor: minorUnits(row.costMinor),
  });
}

const pickWords = {
  atMostOne: "at-most-one",
  exactlyOne: "exactly-one",
  atLeastOne: "at-least-one",
} as const;

function groupOf({ name, pick, items, position }: Rows["group"]): ContentOf<"group"> {
  return groupContent.parse({ name, pick: pickWords[pick], items, position });
}

function ruleOf(row: Rows["rule"]): ContentOf<"rule"> {
  const { kind, because, source, safety, models, position } = row;
  const head = { kind, because, source, safety, models, position };
  if (kind !== "capacity") {
    // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
    return ruleContent.parse({ ...head, when: row.when, then: row.then });
  }
  return ruleContent.parse({
    ...head,
    quantity: row.quantity ?? "",
    unit: row.unit ?? "",
    link: row.link ?? "",
    baseFact: row.baseFact ?? "",
    supply: row.supply ?? {},
    demand: row.demand ?? {},
    reservePct: row.reservePct ?? 0,
  });
}

function packageOf(row: Rows["package"]): ContentOf<"package"> {
  const { id: _, workshopId: __, code: ___, ...content } = row;
  return packageContent.parse(content);
}

function operationOf(row: Rows["operation"]): ContentOf<"operation"> {
  const { id: _, workshopId: __, code: ___, hours, ...content } = row;
  return operationContent.parse({ ...content, hours: hours.toString() });
}

function accessOf({ name, hours, rate, needs }: Rows["access"]): ContentOf<"access"> {
  return accessContent.parse({ name, hours: hours.toString(), rate, needs });
}
