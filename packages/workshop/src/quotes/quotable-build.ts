import type { Transaction } from "@buildproof/database";
import { readBuildSheet } from "../builds/read-build-sheet";
import { type ForecastRecord, forecastRecord } from "../engineering/forecast-record";
import { usedRoad } from "../engineering/used-road";
import { en } from "../messages/en";
import type { DraftLine } from "./draft-line";
import type { QuotePromise } from "./stored-promise";
import type { Selection } from "./stored-selection";

/** What a quote takes from a build: its lines at today's prices, and what is said about it. */
export type QuotableBuild = {
  readonly id: string;
  readonly customerId: string;
  readonly vehicleId: string;
  readonly goal: string;
  readonly selection: Selection;
  readonly lines: readonly DraftLine[];
  readonly labourHours: number;
  readonly savedHours: number;
  readonly dynoHours: number;
  readonly nonReturnableMinor: bigint;
  readonly promise: QuotePromise | null;
  /** The forecast it rests on; null where its items change no power. */
  readonly forecast: ForecastRecord | null;
  readonly inclusions: readonly string[];
  readonly exclusions: readonly string[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
};

/** Null when this workshop has no such build. */
export async function quotableBuild(
  tx: Transaction,
  buildId: string,
  now: Date,
): Promise<QuotableBuild | null> {
  const sheet = await readBuildSheet(tx, buildId, now);
  if (!sheet) return null;
  const { ledger, catalogue, package: bundle, forecastVehicle } = sheet;
  const road = usedRoad(forecastVehicle.given, forecastVehicle.altitudeM);
  const nameOf = (code: string) => catalogue.items.find((item) => item.code === code)?.name ?? code;
  return {
    id: sheet.id,
    customerId: sheet.customer.id,
    vehicleId: sheet.vehicle.id,
    goal: sheet.goal,
    selection: {
      packageCode: bundle?.code ?? null,
      items: sheet.chosen.map(({ code, quantity }) => ({ code, name: nameOf(code), quantity })),
      leadDays: ledger.leadDays,
      findings: sheet.findings.map(({ rule, headline, because, safety }) => ({
        rule,
        sentence: `${headline}. ${because}`,
        safety,
      })),
    },
    lines: ledger.lines.map((line) => ({
      ...line,
      unitPriceMinor: BigInt(line.unitPriceMinor),
      unitCostMinor: BigInt(line.unitCostMinor),
      discountPct: "0",
      taxCategory: "S",
    })),
    labourHours: ledger.labourHours,
    savedHours: ledger.savedHours,
    dynoHours: ledger.dynoHours,
    nonReturnableMinor: BigInt(ledger.nonReturnableCostMinor),
    promise: bundle?.promise ?? null,
    forecast: forecastRecord(sheet.forecast, sheet.assumptionChanges, road),
    inclusions: en.inclusions(bundle?.name ?? null),
    exclusions: [...(bundle?.exclusions ?? []), ...en.exclusions],
    assumptions: [...(bundle?.assumptions ?? []), ...en.assumptions],
    cautions: [...(bundle?.cautions ?? []), ...en.cautions],
  };
}
