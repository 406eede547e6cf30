import { movingAverage, resample, valueAt } from "./resample";
import { BIN_RPM, type Knot } from "./sweep-bins";

type RatioAt = { readonly engineRpm: number; readonly ratio: number };

/** How many turns the engine made for one of the hubs, over the sweep. */
export type DriveTrace = { readonly mean: number; readonly least: RatioAt; readonly greatest: RatioAt };

/** At the speeds of the curve; null where the log carries no speed of the hubs. */
export function driveTrace(
  knots: readonly Pick<Knot, "engineRpm" | "hubRpm">[],
  speeds: readonly { readonly engineRpm: number }[],
  smoothingRpm: number,
): DriveTrace | null {
  const samples = knots.flatMap(({ engineRpm, hubRpm }) =>
    hubRpm === null ? [] : [{ engineRpm, value: hubRpm }],
  );
  const smoothed = movingAverage(resample(samples, BIN_RPM), smoothingRpm);
  const ratios = speeds.flatMap(({ engineRpm }): RatioAt[] => {
    const hubRpm = valueAt(smoothed, engineRpm);
    return hubRpm === null || !(hubRpm > 0) ? [] : [{ engineRpm, ratio: engineRpm / hubRpm }];
  });
  const [first] = ratios;
  if (!first) return null;
  return {
    mean: ratios.reduce((sum, { ratio }) => sum + ratio, 0) / ratios.length,
    least: ratios.reduce((least, each) => (each.ratio < least.ratio ? each : least), first),
    greatest: ratios.reduce((most, each) => (each.ratio > most.ratio ? each : most), first),
  };
}
