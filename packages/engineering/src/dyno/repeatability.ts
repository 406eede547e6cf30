import { meanCurve } from "./mean-curve";
import type { Repeatability } from "./proof-figures";
import type { ReducedRun } from "./reduced-run";

export const FEWEST_RUNS = 3;
export const SPREAD_LIMIT_PCT = 2;

/**
 * A figure is believable when its runs agree: one hot run must not set the headline.
 *
 * @source Three runs and a spread of 2 %: common practice, no source. (Modern hub dynos repeat to
 *         ±0.5 to 1 % on one day: common practice, no citable figure.)
 */
export function repeatability(runs: readonly ReducedRun[], limitPct = SPREAD_LIMIT_PCT): Repeatability {
  const band = meanCurve(runs).map(({ engineRpm }) => engineRpm);
  const [fromRpm, toRpm] = [band.at(0), band.at(-1)];
  const shared = new Set(band);
  const peakSpreadPct = spreadPct(runs.map(({ peakPower }) => peakPower.value));
  const meanSpreadPct = spreadPct(
    runs.map(({ points }) =>
      mean(points.filter(({ engineRpm }) => shared.has(engineRpm)).map((point) => point.correctedPowerKw)),
    ),
  );
  const enoughRuns = runs.length >= FEWEST_RUNS;
  const hasBand = fromRpm !== undefined && toRpm !== undefined;
  return {
    runs: runs.length,
    enoughRuns,
    peakSpreadPct,
    meanSpreadPct,
    commonBand: hasBand ? { fromRpm, toRpm } : null,
    limitPct,
    repeatable: enoughRuns && hasBand && peakSpreadPct <= limitPct && meanSpreadPct <= limitPct,
  };
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** (greatest − least) ÷ mean, in per cent; 0 for fewer than two values. */
function spreadPct(values: readonly number[]): number {
  if (values.length < 2 || mean(values) === 0) return 0;
  return (100 * (Math.max(...values) - Math.min(...values))) / mean(values);
}
