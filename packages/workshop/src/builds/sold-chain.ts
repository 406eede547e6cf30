import type { Transaction } from "@buildproof/database";
import type { BuildForecast } from "../engineering/build-forecast";
import { forecastOfItems } from "../engineering/forecast-of-items";
import { readSelection } from "../quotes/stored-selection";
import { capacitiesOf, checkBuild, readCheckedBuild, type SheetCapacity } from "./read-build-sheet";

export type SoldChain = { readonly capacities: readonly SheetCapacity[]; readonly forecast: BuildForecast };

/** A version by its id, or a job's accepted one. */
export type Sold = { readonly versionId: string } | { readonly jobId: string };

/**
 * Asked against given, and the forecast, for what a version sells: its own items, whatever was changed on the
 * build since, by the rules of today. Null when this workshop has no such version.
 */
export async function soldChain(tx: Transaction, sold: Sold, now: Date): Promise<SoldChain | null> {
  const version = await tx.quoteVersion.findFirst({
    where: "versionId" in sold ? { id: sold.versionId } : { jobs: { some: { id: sold.jobId } } },
    select: { selection: true, quote: { select: { buildId: true } } },
  });
  const build = version && (await readCheckedBuild(tx, version.quote.buildId, now));
  if (!version || !build) return null;
  const { catalogue, site, vehicle, checked, forecastVehicle } = build;
  const known = new Set(catalogue.items.map(({ code }) => code));
  const items = readSelection(version.selection).items.filter(({ code }) => known.has(code));
  const codes = new Set(items.map(({ code }) => code));
  const forecast = forecastOfItems(forecastVehicle, catalogue.items, codes);
  const { modelCode } = vehicle;
  const { factsWith } = checked;
  return {
    capacities: capacitiesOf(checkBuild(catalogue, site, items, { modelCode, factsWith })),
    forecast,
  };
}
