import type { DriveTrace } from "./drive-trace";

/** How far the drive may stray from its ratio before a run says nothing of the engine. */
export const SLIP_LIMIT_PCT = 1;

export type DriveSlip = {
  /**
   * `held`: as entered, within the limit. `another-ratio`: one ratio all along, but not the one entered.
   * `slipped`: it changed during the run: a converter that was not locked, a clutch that slipped, a shift.
   */
  readonly outcome: "held" | "another-ratio" | "slipped";
  readonly expectedRatio: number;
  readonly meanRatio: number;
  /** Where the ratio is furthest from what was entered, and how far, in per cent; above 0 the engine runs ahead. */
  readonly worstPct: number;
  readonly worstAtRpm: number;
};

/**
 * Whether engine and hubs kept to the ratio of the gear times the final drive.
 *
 * @source The ratio is an identity of a locked drive; 1 % is common practice, no source.
 * @valid  A hub or shaft dyno. On rollers the tyres creep, and their radius enters.
 * @throws RangeError for a ratio that is not above 0.
 */
export function driveSlip(trace: DriveTrace, expectedRatio: number): DriveSlip {
  if (!(expectedRatio > 0)) throw new RangeError("The ratio of engine to hubs is greater than 0.");
  const strayed = (ratio: number) => 100 * (ratio / expectedRatio - 1);
  const { least, greatest, mean } = trace;
  const worst = Math.abs(strayed(least.ratio)) > Math.abs(strayed(greatest.ratio)) ? least : greatest;
  const worstPct = strayed(worst.ratio);
  const figures = { expectedRatio, meanRatio: mean, worstPct, worstAtRpm: worst.engineRpm };
  if (Math.abs(worstPct) <= SLIP_LIMIT_PCT) return { outcome: "held", ...figures };
  const isSteady =
    100 * (greatest.ratio / mean - 1) <= SLIP_LIMIT_PCT && 100 * (1 - least.ratio / mean) <= SLIP_LIMIT_PCT;
  return { outcome: isSteady ? "another-ratio" : "slipped", ...figures };
}

/** One sentence for people that says what to do; null where the drive held. */
export function explainDriveSlip(slip: DriveSlip): string | null {
  const { expectedRatio, meanRatio, worstPct, worstAtRpm } = slip;
  switch (slip.outcome) {
    case "held":
      return null;
    case "another-ratio":
      return `The engine turns ${meanRatio.toFixed(2)} times for one turn of the hubs all along, where gear and final drive make ${expectedRatio.toFixed(2)}: enter the ratios of the gear that was held.`;
    case "slipped":
      return `Engine and hubs differ from ${expectedRatio.toFixed(2)} to 1 by ${Math.abs(worstPct).toFixed(1)} % at ${Math.round(worstAtRpm / 10) * 10} rpm, where ${SLIP_LIMIT_PCT} % is allowed: lock the converter, hold the gear, and run again.`;
  }
}
