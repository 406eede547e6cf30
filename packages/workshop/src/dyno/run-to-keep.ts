import { type DriveSlip, explainDriveSlip } from "@buildproof/engineering";
import { abortLimits, type LimitedEngine, limitSentence, worstReading } from "./abort-limits";
import { PAST_A_LIMIT, VOID } from "./barred-run";
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
  readonly slipPct: number | null;
  readonly curve: StoredPoint[];
  readonly warnings: string[];
  readonly excludedBecause: string | null;
};

type Measured = {
  readonly factor: number;
  readonly engine: LimitedEngine;
  /** Null where nobody can tell. */
  readonly slip: DriveSlip | null;
};

/**
 * A run as it is kept: corrected, judged against the abort limits and the ratio of its gear, and left out of the
 * figures if it went past the one or strayed from the other.
 */
export function runToKeep(run: ObservedRun, { factor, engine, slip }: Measured): KeptRun {
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
    slipPct: slip?.worstPct ?? null,
    curve,
    warnings: [...named, ...run.warnings],
    excludedBecause: past.length > 0 ? `${PAST_A_LIMIT}${past.join(" ")}` : voidBecause(slip),
  };
}

function voidBecause(slip: DriveSlip | null): string | null {
  const strayed = slip && explainDriveSlip(slip);
  return strayed ? `${VOID}${strayed}` : null;
}

function highest(curve: readonly StoredPoint[], measure: (point: StoredPoint) => number): StoredPoint {
  return curve.reduce((best, point) => (measure(point) > measure(best) ? point : best));
}
