import type { RunPoint } from "@buildproof/engineering";
import { z } from "zod";

const channel = z.number().nullable().default(null);

const storedPoint = z.object({
  engineRpm: z.number(),
  powerKw: z.number(),
  torqueNm: z.number(),
  boostKPa: channel,
  lambda: channel,
  fuelRailMPa: channel,
  intakeTempC: channel,
});

/** A run's curve as the database keeps it: corrected, on a common grid. */
export const storedCurve = z.array(storedPoint).min(1);
export type StoredPoint = z.output<typeof storedPoint>;

/** A point of an observed curve as it is kept: the factor applied, and no more digits than were measured. */
export function pointToKeep(point: RunPoint, factor: number): StoredPoint {
  return {
    engineRpm: point.engineRpm,
    powerKw: rounded(point.observedPowerKw * factor, 3),
    torqueNm: rounded(point.observedTorqueNm * factor, 3),
    boostKPa: optional(point.boostKPa, 2),
    lambda: optional(point.lambda, 4),
    fuelRailMPa: optional(point.fuelRailMPa, 3),
    intakeTempC: optional(point.intakeTempC, 2),
  };
}

function optional(value: number | null, decimals: number): number | null {
  return value === null ? null : rounded(value, decimals);
}

function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}

/** The distance of the points: the smallest step, since a gap in the log is a longer one. */
export function gridOf(points: readonly { readonly engineRpm: number }[]): number {
  let grid = Number.POSITIVE_INFINITY;
  points.forEach((point, index) => {
    const before = points[index - 1];
    if (before) grid = Math.min(grid, point.engineRpm - before.engineRpm);
  });
  return Number.isFinite(grid) ? grid : 50;
}
