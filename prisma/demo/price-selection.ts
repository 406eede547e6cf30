import {
  type AccessWork as AccessHours,
  depositFor,
  labour,
  quoteTotals,
  type TotalledLine,
} from "@buildproof/pricing";
import { basisPoints, minorUnits } from "@buildproof/units";
import { catalogue } from "./catalogue/catalogue";
import type { AccessWork, CatalogueItem, HourRate, Operation } from "./catalogue/types";
import type { DemoSite } from "./demo-workshop";

type LineKind = "item" | "operation" | "access" | "dyno" | "fee";

type Line = {
  readonly kind: LineKind;
  readonly code: string;
  readonly description: string;
  readonly quantity: number;
  readonly unit: "each" | "h";
  readonly unitPriceMinor: number;
  readonly unitCostMinor: number;
};

/** Everything that a quote and a job take from what was chosen. */
export type PricedSelection = TotalledLine & {
  readonly lines: readonly (Line & TotalledLine)[];
  readonly items: readonly CatalogueItem[];
  readonly operations: readonly Operation[];
  readonly access: readonly AccessWork[];
  readonly discountMinor: number;
  readonly depositMinor: number;
  readonly nonReturnableMinor: number;
  readonly labourHours: number;
  readonly savedHours: number;
  readonly dynoHours: number;
};

/** Prices what is chosen, access work counted once, a discount off the whole. */
export function priceSelection(
  site: DemoSite,
  itemCodes: readonly string[],
  discountPct = 0,
): PricedSelection {
  const items = itemCodes.map(itemOf);
  const wanted = new Set(items.flatMap((item) => item.operations));
  const operations = catalogue.operations.filter((operation) => wanted.has(operation.id));
  const plan = labour({ access: catalogue.access.map(hoursOf), operations: operations.map(ownHoursOf) });
  const access = catalogue.access.filter(({ id }) => plan.accessUsed.includes(id));
  const lines = [...itemLines(items), ...hourLines(site, operations, access)];
  const net = lines.reduce((sum, line) => sum + Math.round(line.quantity * line.unitPriceMinor), 0);
  const discountMinor = minorUnits(Math.round((net * discountPct) / 100));
  const totals = quoteTotals({
    currency: site.currency,
    jurisdiction: site.jurisdiction,
    pricesIncludeTax: false,
    discountMinor,
    lines: lines.map(({ quantity, unitPriceMinor }) => ({
      quantity,
      unitPriceMinor: minorUnits(unitPriceMinor),
      taxCategory: "S" as const,
    })),
  });
  const nonReturnableMinor = minorUnits(
    items.filter((item) => !item.returnable).reduce((sum, item) => sum + item.costCents, 0),
  );
  const hoursAt = (rate: HourRate) =>
    round2(
      operations.filter((each) => each.rate === rate).reduce((sum, each) => sum + each.ownHours, 0) +
        access.filter((each) => each.rate === rate).reduce((sum, each) => sum + each.hours, 0),
    );
  return {
    lines: lines.map((line, index) => ({ ...line, ...lineTotals(totals.lines, index) })),
    items,
    operations,
    access,
    netMinor: totals.netMinor,
    taxMinor: totals.taxMinor,
    grossMinor: totals.grossMinor,
    discountMinor,
    nonReturnableMinor,
    depositMinor: depositFor({
      totalMinor: totals.grossMinor,
      share: basisPoints(site.depositSharePct * 100),
      nonReturnableCostMinor: nonReturnableMinor,
    }).depositMinor,
    labourHours: hoursAt("workshop"),
    savedHours: plan.savedHours,
    dynoHours: hoursAt("dyno"),
  };
}

function itemOf(code: string): CatalogueItem {
  const item = catalogue.items.find(({ id }) => id === code);
  if (!item) throw new Error(`the demo catalogue has no item ${code}`);
  return item;
}

const hoursOf = ({ id, hours, needs }: AccessWork): AccessHours => ({ id, hours, needs });
const ownHoursOf = ({ id, ownHours, access }: Operation) => ({ id, hours: ownHours, access });
const round2 = (hours: number) => Math.round(hours * 100) / 100;

function itemLines(items: readonly CatalogueItem[]): Line[] {
  return items
    .filter((item) => item.priceCents > 0)
    .map((item) => ({
      kind: item.system === "fees" ? "fee" : "item",
      code: item.id,
      description: item.name,
      quantity: 1,
      unit: "each",
      unitPriceMinor: item.priceCents,
      unitCostMinor: item.costCents,
    }));
}

function hourLines(site: DemoSite, operations: readonly Operation[], access: readonly AccessWork[]): Line[] {
  const line = (kind: LineKind, rate: HourRate, code: string, description: string, hours: number): Line => ({
    kind: rate === "dyno" ? "dyno" : kind,
    code,
    description,
    quantity: hours,
    unit: "h",
    unitPriceMinor: rate === "dyno" ? site.dynoRateMinorPerHour : site.labourRateMinorPerHour,
    unitCostMinor: rate === "dyno" ? site.dynoCostMinorPerHour : site.labourCostMinorPerHour,
  });
  return [
    ...operations.map((each) => line("operation", each.rate, each.id, each.name, each.ownHours)),
    ...access.map((each) => line("access", each.rate, each.id, each.name, each.hours)),
  ].filter(({ quantity }) => quantity > 0);
}

function lineTotals(totals: readonly TotalledLine[], index: number): TotalledLine {
  const found = totals[index];
  if (!found) throw new Error("a priced line has no totals");
  const { netMinor, taxMinor, grossMinor } = found;
  return { netMinor, taxMinor, grossMinor };
}
