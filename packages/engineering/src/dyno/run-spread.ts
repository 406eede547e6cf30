import { meanCurve } from "./mean-curve";
import type { ReducedRun } from "./reduced-run";
import { FEWEST_RUNS, SPREAD_LIMIT_PCT } from "./repeatability";
import { type RunChannel, runChannels } from "./run-row";

/** A channel in which a run differs from the others by more than runs of one set-up do. */
export type OutlierReason = { readonly channel: RunChannel; readonly difference: number };

/** One run beside the others of its session. */
export type RunStanding = {
  /** Over the speeds that all runs share. */
  readonly meanKw: number;
  /** Its mean power over the median of the other runs' mean powers, in per cent. */
  readonly offOthersPct: number;
  readonly isOutlier: boolean;
  /** What the log shows of why; empty where it shows nothing. */
  readonly reasons: readonly OutlierReason[];
  readonly intakeTempC: number | null;
};

/** How power went from run to run, as a straight line through the runs in their order. */
export type HeatSoak = {
  readonly powerPctPerRun: number;
  readonly intakeKPerRun: number | null;
  readonly isSoaking: boolean;
};

export type RunSpread = {
  readonly standings: readonly RunStanding[];
  /** Null with fewer than three runs. */
  readonly heatSoak: HeatSoak | null;
};

/** Differences that runs of one set-up do not show. Common practice, no source. */
const TELLING: Readonly<Record<RunChannel, number>> = {
  boostKPa: 3,
  lambda: 0.02,
  fuelRailMPa: 0.5,
  intakeTempC: 5,
};

/** A loss from run to run of less is within what runs differ anyway. Common practice, no source. */
const LEAST_LOSS_PCT = 0.25;

/**
 * Which runs stand apart from the others, and whether the engine loses power as it warms.
 *
 * @source An outlier is off the median of the other runs by more than the spread allowed, while those keep to it; heat soak is a falling
 *         line of power while the intake air warms: common practice, no source.
 * @valid  Runs in the order in which they were made, on one grid.
 */
export function runSpread(runs: readonly ReducedRun[]): RunSpread {
  const shared = new Set(meanCurve(runs).map(({ engineRpm }) => engineRpm));
  const means = runs.map((run) => meansOver(run, shared));
  return {
    standings: means.map((own, index) => standing(own, means.toSpliced(index, 1))),
    heatSoak: runs.length < FEWEST_RUNS || shared.size === 0 ? null : heatSoak(means),
  };
}

type Means = { readonly powerKw: number } & { readonly [channel in RunChannel]: number | null };

function meansOver({ points }: ReducedRun, shared: ReadonlySet<number>): Means {
  const inBand = points.filter(({ engineRpm }) => shared.has(engineRpm));
  const channel = (name: RunChannel) => mean(inBand.flatMap((point) => point[name] ?? []));
  return {
    powerKw: mean(inBand.map((point) => point.correctedPowerKw)) ?? 0,
    boostKPa: channel("boostKPa"),
    lambda: channel("lambda"),
    fuelRailMPa: channel("fuelRailMPa"),
    intakeTempC: channel("intakeTempC"),
  };
}

function standing(own: Means, others: readonly Means[]): RunStanding {
  const powers = others.map(({ powerKw }) => powerKw);
  const usual = median(powers);
  const offOthersPct = usual ? 100 * (own.powerKw / usual - 1) : 0;
  // Of two runs nobody can tell which is the odd one; and where the others differ too, it is the session that does.
  const othersAgree =
    others.length >= FEWEST_RUNS - 1 &&
    100 * (Math.max(...powers) - Math.min(...powers)) <= SPREAD_LIMIT_PCT * (usual ?? 0);
  const isOutlier = othersAgree && Math.abs(offOthersPct) > SPREAD_LIMIT_PCT;
  const reasons = isOutlier ? runChannels.flatMap((channel) => reasonFor(channel, own, others)) : [];
  return { meanKw: own.powerKw, offOthersPct, isOutlier, reasons, intakeTempC: own.intakeTempC };
}

function reasonFor(channel: RunChannel, own: Means, others: readonly Means[]): readonly OutlierReason[] {
  const usual = median(others.flatMap((each) => each[channel] ?? []));
  const value = own[channel];
  if (usual === null || value === null) return [];
  const difference = value - usual;
  return Math.abs(difference) >= TELLING[channel] ? [{ channel, difference }] : [];
}

function heatSoak(means: readonly Means[]): HeatSoak {
  const powerPctPerRun =
    (100 * slope(means.map(({ powerKw }) => powerKw))) / (mean(means.map(({ powerKw }) => powerKw)) || 1);
  const temperatures = means.flatMap(({ intakeTempC }) => intakeTempC ?? []);
  const intakeKPerRun = temperatures.length === means.length ? slope(temperatures) : null;
  const isWarming = intakeKPerRun === null || intakeKPerRun > 0;
  return { powerPctPerRun, intakeKPerRun, isSoaking: powerPctPerRun <= -LEAST_LOSS_PCT && isWarming };
}

/** Of the least-squares line through values one step apart. */
function slope(values: readonly number[]): number {
  const middle = (values.length - 1) / 2;
  const level = mean(values) ?? 0;
  const rise = values.reduce((sum, value, index) => sum + (index - middle) * (value - level), 0);
  return rise / values.reduce((sum, _, index) => sum + (index - middle) ** 2, 0);
}

function mean(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const [low, high] = [
    sorted[Math.floor((sorted.length - 1) / 2)],
    sorted[Math.ceil((sorted.length - 1) / 2)],
  ];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}
