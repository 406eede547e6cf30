import { ok, type Result, refused } from "@buildproof/units";
import { channelInAnotherUnit } from "./channel-units";
import { driveTrace } from "./drive-trace";
import { PowerIdentity } from "./power-identity";
import type { ReducedRun, RunAccumulator, RunRefusal, RunSettings, RunWarning } from "./reduced-run";
import { channelExtremes, gapsIn, peakOf, runPoints } from "./run-curve";
import type { RunRow } from "./run-row";
import { SpeedWatch } from "./speed-watch";
import type { SweepBins } from "./sweep-bins";
import { SHORTEST_SWEEP_RPM, SweepFinder } from "./sweep-finder";

/** No engine is driven through a sweep below this: the column is in another unit. */
const SLOWEST_RPM = 900;
/** Fewer points on the grid say nothing about a curve. */
const FEWEST_POINTS = 4;

/**
 * Reduces a dyno log, row by row, to a curve on a common grid: the longest sweep is found, averaged
 * over 10 rpm, smoothed by a moving average of the stated width, and corrected by the factor.
 *
 * @source Equal-step resampling and a stated moving average: common practice, no source.
 * @valid  One sweep of rising engine speed of at least 500 rpm.
 */
export function runAccumulator(settings: RunSettings): RunAccumulator {
  const { smoothingRpm = 200, gridRpm = 50, fromRpm = 0, toRpm = Number.POSITIVE_INFINITY } = settings;
  if (!(settings.factor > 0)) throw new RangeError("A correction factor is greater than 0.");
  if (!(smoothingRpm >= 0)) throw new RangeError("A smoothing width is 0 rpm or more.");
  if (!(gridRpm >= 10) || gridRpm % 10 !== 0) throw new RangeError("A grid is a multiple of 10 rpm.");
  const finder = new SweepFinder({ fromRpm, toRpm });
  const identity = new PowerIdentity();
  const speed = new SpeedWatch();
  return {
    add(row) {
      finder.add(row);
      identity.add(row);
      speed.add(row);
    },
    finish() {
      const { sweep, excluded } = finder.finish();
      const refusal = refusalOf(finder, speed, sweep, excluded);
      if (refusal) return refused(refusal);
      const curve = { factor: settings.factor, smoothingRpm, gridRpm };
      const { correctionValid = true } = settings;
      const warnings = [
        ...identityWarning(identity),
        ...timeWarning(finder),
        ...speedWarnings(speed, finder, sweep),
      ];
      const figures = figuresOf(sweep, curve, warnings);
      if (figures.points.length < FEWEST_POINTS) return refused(tooShort(sweep));
      const unit = channelInAnotherUnit(figures.channels);
      if (unit) return refused(unit);
      return ok({ ...figures, ...curve, correctionValid, rowsRead: finder.rowsRead, excluded });
    },
  };
}

/** The same for rows that are at hand. */
export function reduceRun(rows: Iterable<RunRow>, settings: RunSettings): Result<ReducedRun, RunRefusal> {
  const accumulator = runAccumulator(settings);
  for (const row of rows) accumulator.add(row);
  return accumulator.finish();
}

function refusalOf(
  finder: SweepFinder,
  speed: SpeedWatch,
  sweep: SweepBins,
  excluded: ReducedRun["excluded"],
): RunRefusal | null {
  if (finder.rowsRead === 0) return { code: "no-rows" };
  if (finder.rowsWithPower === 0) return { code: "no-power-or-torque" };
  if (sweep.rows === 0) return { code: "no-usable-rows", excluded };
  if (sweep.spanRpm >= SHORTEST_SWEEP_RPM) return null;
  if (speed.greatestRpm < SLOWEST_RPM) return { code: "speed-not-in-rpm", greatest: speed.greatestRpm };
  const { byRpm, ...fell } = speed.fell;
  return byRpm >= SHORTEST_SWEEP_RPM ? { code: "speed-falls", ...fell } : tooShort(sweep);
}

function tooShort(sweep: SweepBins): RunRefusal {
  return { code: "sweep-too-short", fromRpm: sweep.lowestRpm, toRpm: sweep.highestRpm };
}

type Figures = Omit<
  ReducedRun,
  "factor" | "smoothingRpm" | "gridRpm" | "correctionValid" | "rowsRead" | "excluded"
>;

function figuresOf(
  sweep: SweepBins,
  curve: Pick<ReducedRun, "factor" | "smoothingRpm" | "gridRpm">,
  warnings: readonly RunWarning[],
): Figures {
  const knots = sweep.knots();
  const gaps = gapsIn(knots);
  const points = runPoints(knots, gaps, curve);
  const durationS = sweep.lastS - sweep.firstS;
  return {
    points,
    peakPower: peakOf(points, (point) => point.correctedPowerKw),
    peakTorque: peakOf(points, (point) => point.correctedTorqueNm),
    observedPeakPower: peakOf(points, (point) => point.observedPowerKw),
    channels: {
      boostKPa: channelExtremes(knots, "boostKPa"),
      lambda: channelExtremes(knots, "lambda"),
      fuelRailMPa: channelExtremes(knots, "fuelRailMPa"),
      intakeTempC: channelExtremes(knots, "intakeTempC"),
    },
    drive: driveTrace(knots, points, curve.smoothingRpm),
    durationS,
    rampRpmPerS: durationS > 0 ? sweep.spanRpm / durationS : 0,
    rowsUsed: sweep.rows,
    warnings: [...warnings, ...gaps.map((gap) => ({ code: "gap-in-speed" as const, ...gap }))],
  };
}

function identityWarning(identity: PowerIdentity): readonly RunWarning[] {
  const warning = identity.warning();
  return warning ? [warning] : [];
}

function speedWarnings(speed: SpeedWatch, finder: SweepFinder, sweep: SweepBins): readonly RunWarning[] {
  const stand = speed.warning(sweep.lowestRpm, sweep.highestRpm);
  const { otherRise } = finder;
  // Coming up to the soak before a sweep is a rise too, but not one through the sweep's own speeds.
  const shared = otherRise
    ? Math.min(otherRise.toRpm, sweep.highestRpm) - Math.max(otherRise.fromRpm, sweep.lowestRpm)
    : 0;
  return [
    ...(stand ? [stand] : []),
    ...(otherRise && shared >= SHORTEST_SWEEP_RPM
      ? [{ code: "rises-more-than-once" as const, ...otherRise }]
      : []),
  ];
}

function timeWarning({ rowsBackInTime }: SweepFinder): readonly RunWarning[] {
  return rowsBackInTime > 0 ? [{ code: "time-goes-back", rows: rowsBackInTime }] : [];
}
