import type { Peak } from "./reduced-run";

/** How well the runs of one set-up agree with each other. */
export type Repeatability = {
  readonly runs: number;
  /** At least three runs. */
  readonly enoughRuns: boolean;
  /** (greatest − least) ÷ mean of the corrected peak powers, in per cent. */
  readonly peakSpreadPct: number;
  /** The same for the mean corrected power over the speeds that all runs share. */
  readonly meanSpreadPct: number;
  readonly commonBand: { readonly fromRpm: number; readonly toRpm: number } | null;
  readonly limitPct: number;
  readonly repeatable: boolean;
};

export type GainPoint = {
  readonly engineRpm: number;
  readonly baselineKw: number;
  readonly proofKw: number;
  readonly powerKw: number;
  readonly torqueNm: number;
};

/** What the proof made over the baseline, on the mean curve of each. */
export type Gain = {
  readonly points: readonly GainPoint[];
  readonly baselinePeak: Peak;
  readonly proofPeak: Peak;
  readonly peakPowerKw: number;
  readonly peakPowerPct: number;
  readonly peakTorqueNm: number;
  readonly greatestAt: GainPoint;
  /** The same gain of peak power before correction. */
  readonly observedPeakPowerKw: number;
  /** Factors differ by more than 0.02: show the observed gain first. */
  readonly showObservedFirst: boolean;
  /** A gain under 2 % is within what the dyno itself may do. */
  readonly demonstrated: boolean;
};

/** What the quote promised, at the same point of measurement as the proof. */
export type PowerPromise = { readonly lowKw: number; readonly highKw: number };

export type VerdictReason =
  | "within-the-promise"
  | "above-the-promise"
  | "below-the-promise"
  | "too-few-runs"
  | "runs-do-not-agree"
  | "correction-out-of-limits";

export type Verdict = {
  readonly outcome: "kept" | "missed" | "not-demonstrated";
  readonly reason: VerdictReason;
  readonly promise: PowerPromise;
  /** Mean of the corrected peak powers; null without runs. */
  readonly measuredKw: number | null;
  readonly leastKw: number | null;
  readonly greatestKw: number | null;
  /** Measured less the low end of the promise; negative is a shortfall. */
  readonly aboveLowKw: number | null;
  readonly repeatability: Repeatability | null;
};
