import { z } from "zod";
import type { BuildForecast } from "./build-forecast";
import type { AssumptionChanges } from "./stored-assumptions";
import type { UsedAssumption, UsedAssumptions } from "./used-assumptions";

const band = z.object({ low: z.number(), expected: z.number(), high: z.number(), speedRpm: z.number() });

const changedAssumption = z.object({
  name: z.string(),
  label: z.string(),
  unit: z.string(),
  usual: z.number(),
  used: z.number(),
  reason: z.string(),
  by: z.string(),
  at: z.string(),
});
export type ChangedAssumption = z.output<typeof changedAssumption>;

const storedRecord = z.object({
  at: z.literal("hubs"),
  reference: z.string(),
  baseline: z.string(),
  powerKw: band,
  torqueNm: band,
  hotDay: z.object({ tempC: z.number(), powerKw: band, torqueNm: band }),
  limits: z.array(z.string()),
  fuel: z.object({ sweep: z.string(), sustained: z.string() }),
  /** Every figure as used, by name. */
  assumptions: z.record(z.string(), z.number()),
  /** Those that were changed on the build, with the reason. */
  changed: z.array(changedAssumption),
});

/** The forecast that a version of a quote rested on when it was made: the JSON of its `forecast`. */
export type ForecastRecord = z.output<typeof storedRecord>;

/** Null where the version rested on none, or was made before forecasts were kept. */
export function readForecastRecord(json: unknown): ForecastRecord | null {
  return json === null || json === undefined ? null : storedRecord.parse(json);
}

/** What is put on the record, the road of its times included; null where there is no forecast. */
export function forecastRecord(
  forecast: BuildForecast,
  changes: AssumptionChanges,
  road: readonly UsedAssumption[],
): ForecastRecord | null {
  if (forecast.kind !== "forecast") return null;
  const { power, torque, hotDay } = forecast;
  const assumptions = [...forecast.assumptions, ...road];
  return {
    at: "hubs",
    reference: forecast.reference,
    baseline: forecast.baseline.sentence,
    powerKw: power,
    torqueNm: torque,
    hotDay: { tempC: hotDay.tempC, powerKw: hotDay.power, torqueNm: hotDay.torque },
    limits: forecast.limits.map(({ headline }) => headline),
    fuel: { sweep: forecast.fuel.sweep.sentence, sustained: forecast.fuel.sustained.sentence },
    assumptions: Object.fromEntries(assumptions.map(({ name, used }) => [name, used])),
    changed: changedOf(assumptions, changes),
  };
}

function changedOf(assumptions: UsedAssumptions, changes: AssumptionChanges) {
  return assumptions.flatMap(({ name, label, unit, usual, used }): readonly ChangedAssumption[] => {
    const change = changes[name];
    if (!change) return [];
    const { reason, by, at } = change;
    return [{ name, label, unit, usual, used, reason, by, at }];
  });
}
