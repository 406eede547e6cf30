import { labour, type QuoteTotals, quoteTotals } from "@buildproof/pricing";
import {
  addDecimals,
  decimalToNumber,
  exactDecimal,
  type MinorUnits,
  minorUnits,
  sumDecimals,
  sumMinorUnits,
} from "@buildproof/units";
import type { Site } from "../core/site";
import type { Catalogue, CatalogueItem, Rate } from "./catalogue-rows";

/** What a build is charged, line by line, without tax. Labour that several items share stands once. */
export type LedgerLine = {
  readonly kind: "item" | "fee" | "operation" | "access" | "dyno";
  readonly code: string;
  readonly description: string;
  /** A decimal as text: pieces or hours. */
  readonly quantity: string;
  readonly unit: "each" | "h";
  readonly unitPriceMinor: MinorUnits;
  readonly unitCostMinor: MinorUnits;
};

export type Amount = Pick<QuoteTotals, "netMinor" | "taxMinor" | "grossMinor">;

export type Ledger = {
  readonly lines: readonly LedgerLine[];
  readonly total: Amount;
  readonly parts: Amount;
  readonly labour: Amount;
  /** Workshop hours, shared access work counted once. */
  readonly labourHours: number;
  readonly dynoHours: number;
  /** Access work within both, and what it would cost more if each operation were sold apart. */
  readonly accessHours: number;
  readonly savedHours: number;
  /** Until the slowest part that is not in stock is here. */
  readonly leadDays: number;
  /** What the parts that cannot go back cost us, landed. */
  readonly nonReturnableCostMinor: MinorUnits;
};

export type Chosen = { readonly code: string; readonly quantity: number };

/** Throws for a code that is not in the catalogue. */
export function ledgerOf(catalogue: Catalogue, site: Site, chosen: readonly Chosen[]): Ledger {
  const items = chosen.map(({ code, quantity }) => ({ item: itemByCode(catalogue, code), quantity }));
  const work = workOf(catalogue, new Set(items.flatMap(({ item }) => item.operations)));
  const hourLine = (
    kind: "operation" | "access",
    { code, name, hours, rate }: { code: string; name: string; hours: string; rate: Rate },
  ): LedgerLine => ({
    kind: rate === "dyno" ? "dyno" : kind,
    code,
    description: name,
    quantity: hours,
    unit: "h",
    unitPriceMinor: site.hourRates[rate].priceMinor,
    unitCostMinor: site.hourRates[rate].costMinor,
  });
  const partLines = items.flatMap(({ item, quantity }) => partLine(item, quantity));
  const labourLines = [
    ...work.operations.map((operation) => hourLine("operation", operation)),
    ...work.access.map((access) => hourLine("access", access)),
  ];
  const lines = [...partLines, ...labourLines];
  const totals = totalsOf(site, lines);
  return {
    lines,
    total: amountOf(totals.lines),
    parts: amountOf(totals.lines.slice(0, partLines.length)),
    labour: amountOf(totals.lines.slice(partLines.length)),
    labourHours: hoursAt(work, "workshop"),
    dynoHours: hoursAt(work, "dyno"),
    accessHours: work.accessHours,
    savedHours: work.savedHours,
    leadDays: Math.max(
      0,
      ...items.map(({ item, quantity }) => (item.inStock >= quantity ? 0 : item.leadDays)),
    ),
    nonReturnableCostMinor: sumMinorUnits(
      items
        .filter(({ item }) => !item.returnable)
        .map(({ item, quantity }) => minorUnits(item.costMinor * quantity)),
    ),
  };
}

export function itemByCode(catalogue: Catalogue, code: string): CatalogueItem {
  const item = catalogue.items.find((each) => each.code === code);
  if (!item) throw new RangeError(`there is no item ${code} in the catalogue`);
  return item;
}

/** What one of an item costs with tax, its labour not included. */
export function priceWithTax(site: Site, netMinor: MinorUnits): MinorUnits {
  const line: LedgerLine = {
    kind: "item",
    code: "",
    description: "",
    quantity: "1",
    unit: "each",
    unitPriceMinor: netMinor,
    unitCostMinor: minorUnits(0),
  };
  return totalsOf(site, [line]).grossMinor;
}

type Work = ReturnType<typeof workOf>;

function workOf(catalogue: Catalogue, codes: ReadonlySet<string>) {
  const operations = catalogue.operations.filter(({ code }) => codes.has(code));
  const plan = {
    access: catalogue.access.map(({ code, hours, needs }) => ({ id: code, hours, needs })),
    operations: operations.map(({ code, hours, access }) => ({ id: code, hours, access })),
  };
  const { accessHours, savedHours, accessUsed } = labour(plan);
  const access = catalogue.access.filter(({ code }) => accessUsed.includes(code));
  return { operations, access, accessHours, savedHours };
}

function hoursAt({ operations, access }: Work, wanted: Rate): number {
  const hours = (list: readonly { readonly rate: Rate; readonly hours: string }[]) =>
    sumDecimals(list.filter(({ rate }) => rate === wanted).map((work) => exactDecimal(work.hours)));
  return decimalToNumber(addDecimals(hours(operations), hours(access)));
}

/** Nothing for what costs nothing by itself: a duty, or work that is priced by its hours. */
function partLine(item: CatalogueItem, quantity: number): readonly LedgerLine[] {
  if (item.priceMinor === 0 && item.costMinor === 0) return [];
  return [
    {
      kind: item.system === "fees" ? "fee" : "item",
      code: item.code,
      description: item.name,
      quantity: String(quantity),
      unit: "each",
      unitPriceMinor: item.priceMinor,
      unitCostMinor: item.costMinor,
    },
  ];
}

function totalsOf(site: Site, lines: readonly LedgerLine[]): QuoteTotals {
  return quoteTotals({
    currency: site.currency,
    jurisdiction: site.jurisdiction,
    pricesIncludeTax: false,
    lines: lines.map(({ quantity, unitPriceMinor }) => ({ quantity, unitPriceMinor, taxCategory: "S" })),
  });
}

function amountOf(lines: readonly Amount[]): Amount {
  return {
    netMinor: sumMinorUnits(lines.map(({ netMinor }) => netMinor)),
    taxMinor: sumMinorUnits(lines.map(({ taxMinor }) => taxMinor)),
    grossMinor: sumMinorUnits(lines.map(({ grossMinor }) => grossMinor)),
  };
}
