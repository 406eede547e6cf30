import { type MeanPoint, meanCurve } from "./mean-curve";
import type { Gain, GainPoint } from "./proof-figures";
import type { ReducedRun } from "./reduced-run";
import { peakOf } from "./run-curve";

const LEAST_DEMONSTRATED_PCT = 2;
const MOST_FACTOR_DIFFERENCE = 0.02;

/**
 * What the proof made over the baseline, between the mean curves of each. Null when the two share no
 * engine speed.
 *
 * @source A gain under 2 % is treated as not demonstrated: EPA report LDTP 78-05 (1978) found dynos of
 *         one laboratory up to 5 to 6 % apart; 2 % on one dyno is common practice, no source.
 */
export function gain(baseline: readonly ReducedRun[], proof: readonly ReducedRun[]): Gain | null {
  const before = meanCurve(baseline);
  const after = meanCurve(proof);
  const points = gainPoints(before, after);
  if (points.length === 0) return null;
  const baselinePeak = peakOf(before, (point) => point.correctedPowerKw);
  const proofPeak = peakOf(after, (point) => point.correctedPowerKw);
  const peakPowerKw = proofPeak.value - baselinePeak.value;
  const peakPowerPct = (100 * peakPowerKw) / baselinePeak.value;
  return {
    points,
    baselinePeak,
    proofPeak,
    peakPowerKw,
    peakPowerPct,
    peakTorqueNm: highest(after, "correctedTorqueNm") - highest(before, "correctedTorqueNm"),
    greatestAt: points.reduce((best, point) => (point.powerKw > best.powerKw ? point : best)),
    observedPeakPowerKw: highest(after, "observedPowerKw") - highest(before, "observedPowerKw"),
    showObservedFirst: factorsDiffer([...baseline, ...proof]),
    demonstrated: peakPowerPct >= LEAST_DEMONSTRATED_PCT,
  };
}

function gainPoints(before: readonly MeanPoint[], after: readonly MeanPoint[]): readonly GainPoint[] {
  const proofAt = new Map(after.map((point) => [point.engineRpm, point]));
  return before.flatMap((base) => {
    const proof = proofAt.get(base.engineRpm);
    if (!proof) return [];
    return [
      {
        engineRpm: base.engineRpm,
        baselineKw: base.correctedPowerKw,
        proofKw: proof.correctedPowerKw,
        powerKw: proof.correctedPowerKw - base.correctedPowerKw,
        torqueNm: proof.correctedTorqueNm - base.correctedTorqueNm,
      },
    ];
  });
}

function highest(points: readonly MeanPoint[], measure: Exclude<keyof MeanPoint, "engineRpm">): number {
  return peakOf(points, (point) => point[measure]).value;
}

function factorsDiffer(runs: readonly ReducedRun[]): boolean {
  const factors = runs.map(({ factor }) => factor);
  return Math.max(...factors) - Math.min(...factors) > MOST_FACTOR_DIFFERENCE;
}
