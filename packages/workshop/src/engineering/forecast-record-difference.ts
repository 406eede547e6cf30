import { withUnit } from "./assumption-words";
import type { ChangedAssumption, ForecastRecord } from "./forecast-record";

/** What became of the forecast and its assumptions from one version to the next, a sentence each. */
export function forecastDifference(
  before: ForecastRecord | null,
  after: ForecastRecord | null,
): readonly string[] {
  if (!before && !after) return [];
  if (!after) return ["No power is forecast any more."];
  if (!before) return [`Power is forecast: ${bandOf(after)}.`, ...after.changed.map(nowAssumed)];
  const moved = bandOf(before) === bandOf(after) ? [] : [`Forecast: ${bandOf(before)} → ${bandOf(after)}.`];
  return [...moved, ...assumptionChanges(before.changed, after.changed)];
}

function assumptionChanges(
  before: readonly ChangedAssumption[],
  after: readonly ChangedAssumption[],
): readonly string[] {
  const earlier = new Map(before.map((each) => [each.name, each]));
  const later = new Set(after.map(({ name }) => name));
  const now = after.filter(({ name, used }) => earlier.get(name)?.used !== used);
  const gone = before.filter(({ name }) => !later.has(name));
  return [
    ...now.map(nowAssumed),
    ...gone.map(({ label, usual, unit }) => `Assumed as usual again: ${label}, ${withUnit(usual, unit)}.`),
  ];
}

function nowAssumed({ label, unit, usual, used, reason, by }: ChangedAssumption): string {
  return `Assumed: ${label} ${withUnit(used, unit)} where ${withUnit(usual, unit)} is usual; ${by}: “${reason}”`;
}

function bandOf({ powerKw: { low, high } }: ForecastRecord): string {
  return `${Math.round(low)}–${Math.round(high)} kW`;
}
