import { meanCurve } from "./mean-curve";
import type { PowerPromise, Repeatability, Verdict, VerdictReason } from "./proof-figures";
import type { ReducedRun } from "./reduced-run";
import { repeatability } from "./repeatability";
import { peakOf } from "./run-curve";

const OUTCOME: Readonly<Record<VerdictReason, Verdict["outcome"]>> = {
  "within-the-promise": "kept",
  "above-the-promise": "kept",
  "below-the-promise": "missed",
  "too-few-runs": "not-demonstrated",
  "runs-do-not-agree": "not-demonstrated",
  "correction-out-of-limits": "not-demonstrated",
};

/**
 * Whether the proof keeps the promise, on the peak of its mean corrected curve. Runs that do not agree,
 * or a correction outside its code, demonstrate nothing either way.
 */
export function verdict(promise: PowerPromise, proofRuns: readonly ReducedRun[]): Verdict {
  if (!(promise.lowKw > 0) || !(promise.highKw >= promise.lowKw)) {
    throw new RangeError("A promise has a low end above 0 kW and a high end that is not below it.");
  }
  const curve = meanCurve(proofRuns);
  const measuredKw = curve.length > 0 ? peakOf(curve, (point) => point.correctedPowerKw).value : null;
  const peaks = proofRuns.map(({ peakPower }) => peakPower.value);
  const agreement = proofRuns.length > 0 ? repeatability(proofRuns) : null;
  const reason = reasonFor(promise, proofRuns, agreement, measuredKw);
  return {
    outcome: OUTCOME[reason],
    reason,
    promise,
    measuredKw,
    leastKw: peaks.length > 0 ? Math.min(...peaks) : null,
    greatestKw: peaks.length > 0 ? Math.max(...peaks) : null,
    aboveLowKw: measuredKw === null ? null : measuredKw - promise.lowKw,
    repeatability: agreement,
  };
}

function reasonFor(
  promise: PowerPromise,
  runs: readonly ReducedRun[],
  agreement: Repeatability | null,
  measuredKw: number | null,
): VerdictReason {
  if (!agreement?.enoughRuns) return "too-few-runs";
  if (!agreement.repeatable || measuredKw === null) return "runs-do-not-agree";
  if (runs.some(({ correctionValid }) => !correctionValid)) return "correction-out-of-limits";
  if (measuredKw < promise.lowKw) return "below-the-promise";
  return measuredKw > promise.highKw ? "above-the-promise" : "within-the-promise";
}
