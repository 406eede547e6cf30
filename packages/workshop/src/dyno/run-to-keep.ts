import { abortLimits, type LimitedEngine, limitSentence, worstReading } from "./abort-limits";
import type { ObservedRun } from "./dyno-upload";
import { pointToKeep, type StoredPoint } from "./stored-curve";

export type KeptRun = {
  readonly number: number;
  readonly observedPeakKw: number;
  readonly peakKw: number;
  readonly peakKwAtRpm: number;
  readonly peakNm: number;
  readonly peakNmAtRpm: number;
  readonly meanKw: number;
  readonly curve: StoredPoint[];
  readonly warnings: string[];
  readonly excludedBecause: string | null;
};

/** How an exclusion begins that nobody may lift. */
export const PAST_A_LIMIT = "Past an abort limit: ";

/** A run as it is kept: corrected, judged against the abort limits, and left out of the figures if it went past one. */
export function runToKeep(run: ObservedRun, factor: number, engine: LimitedEngine): KeptRun {
  const curve = run.points.map((point) => pointToKeep(point, factor));
  const power = highest(curve, (point) => point.powerKw);
  const torque = highest(curve, (point) => point.torqueNm);
  const past = abortLimits(engine).flatMap((limit) => {
    const reading = worstReading(limit, curve);
    return reading?.grade === "stop" ? [limitSentence(limit, reading)] : [];
  });
  const named = run.label === String(run.number) ? [] : [`The log calls this run “${run.label}”.`];
  return {
    number: run.number,
    observedPeakKw: power.powerKw / factor,
    peakKw: power.powerKw,
    peakKwAtRpm: power.engineRpm,
    peakNm: torque.torqueNm,
    peakNmAtRpm: torque.engineRpm,
    meanKw: curve.reduce((sum, point) => sum + point.powerKw, 0) / curve.length,
    curve,
    warnings: [...named, ...run.warnings],
    excludedBecause: past.length > 0 ? `${PAST_A_LIMIT}${past.join(" ")}` : null,
  };
}

function highest(curve: readonly StoredPoint[], measure: (point: StoredPoint) => number): StoredPoint {
  return curve.reduce((best, point) => (measure(point) > measure(best) ? point : best));
}
