import type { ReducedRun, RunPoint } from "./reduced-run";

/** Mean over the runs at each speed of the grid that all of them reached. */
export type MeanPoint = Pick<
  RunPoint,
  "engineRpm" | "observedPowerKw" | "correctedPowerKw" | "correctedTorqueNm"
>;

/** @throws RangeError when the runs were reduced to different grids. */
export function meanCurve(runs: readonly ReducedRun[]): readonly MeanPoint[] {
  const [first, ...others] = runs;
  if (!first) return [];
  if (others.some(({ gridRpm }) => gridRpm !== first.gridRpm)) {
    throw new RangeError("Runs can be averaged only on one grid: reduce them with the same grid first.");
  }
  const rest = others.map(({ points }) => new Map(points.map((point) => [point.engineRpm, point])));
  return first.points.flatMap((point) => {
    const same = [point, ...rest.flatMap((points) => points.get(point.engineRpm) ?? [])];
    if (same.length < runs.length) return [];
    const mean = (measure: (each: RunPoint) => number) =>
      same.reduce((sum, each) => sum + measure(each), 0) / same.length;
    return [
      {
        engineRpm: point.engineRpm,
        observedPowerKw: mean((each) => each.observedPowerKw),
        correctedPowerKw: mean((each) => each.correctedPowerKw),
        correctedTorqueNm: mean((each) => each.correctedTorqueNm),
      },
    ];
  });
}
