import {
  type Correction,
  explainCorrectionWarning,
  FEWEST_RUNS,
  SPREAD_LIMIT_PCT,
} from "@buildproof/engineering";
import { type DynoSetUp, gears } from "./dyno-fields";
import type { ObservedRun } from "./dyno-upload";

/** Baseline and proof at the same oil temperature: cold oil costs kilowatts. Common practice, no source. */
const OIL_TEMP_C = { least: 80, most: 95 } as const;
/** The ramp takes power to spin the driveline up, so it must be what was set. Common practice, no source. */
const RAMP_TOLERANCE = 0.05;
/** A natural engine may show a little ram pressure, never this. Common practice, no source. */
const BOOST_KPA = 10;

/** What the operator should know of a session that is nevertheless taken, in sentences. */
export function sessionWarnings(
  setUp: DynoSetUp,
  correction: Correction,
  runs: readonly ObservedRun[],
): readonly string[] {
  return [
    ...correction.warnings.map(explainCorrectionWarning),
    ...runWarnings(runs),
    ...setUpWarnings(setUp, runs),
  ];
}

function runWarnings(runs: readonly ObservedRun[]): readonly string[] {
  const few = `${runs.length} of ${FEWEST_RUNS} runs: make the rest under the same set-up before anything is concluded.`;
  const spread = spreadPct(runs.map(peakKw));
  const wide = `The peaks of the runs spread by ${spread.toFixed(1)} % where ${SPREAD_LIMIT_PCT} % is allowed: find out why, and run again.`;
  return [...(runs.length < FEWEST_RUNS ? [few] : []), ...(spread > SPREAD_LIMIT_PCT ? [wide] : [])];
}

function setUpWarnings(setUp: DynoSetUp, runs: readonly ObservedRun[]): readonly string[] {
  const warnings: string[] = [];
  if (setUp.gear === "other")
    warnings.push(`Measured in ${gears.other}: these runs do not compare with runs in the gear nearest 1:1.`);
  const { gearboxOilTempC: oil } = setUp;
  if (oil < OIL_TEMP_C.least || oil > OIL_TEMP_C.most)
    warnings.push(
      `Gearbox oil at ${oil} °C: baseline and proof belong at ${OIL_TEMP_C.least} to ${OIL_TEMP_C.most} °C, because cold oil costs power.`,
    );
  if (runs.every(({ drive }) => drive === null))
    warnings.push(
      "The log carries no speed of the hubs (hub_rpm), so nobody can tell whether the converter or a clutch slipped.",
    );
  const ramp = runs.find((run) => Math.abs(run.rampRpmPerS / setUp.rampRpmPerS - 1) > RAMP_TOLERANCE);
  if (ramp)
    warnings.push(
      `Run ${ramp.label} rose by ${ramp.rampRpmPerS.toFixed(0)} rpm/s where ${setUp.rampRpmPerS} was entered: the same ramp belongs before and after.`,
    );
  return [...warnings, ...boostWarnings(setUp, runs)];
}

function boostWarnings({ aspiration }: DynoSetUp, runs: readonly ObservedRun[]): readonly string[] {
  const boosts = runs.flatMap(({ points }) => points.flatMap(({ boostKPa }) => boostKPa ?? []));
  if (boosts.length === 0) return [];
  const most = Math.max(...boosts);
  if (aspiration === "natural" && most > BOOST_KPA)
    return [
      `The log shows ${most.toFixed(0)} kPa of boost, but the engine was entered as naturally aspirated: check which of the two is right.`,
    ];
  if (aspiration !== "natural" && most <= BOOST_KPA)
    return [
      "The engine was entered as boosted, but the log shows no boost: check which of the two is right.",
    ];
  return [];
}

function peakKw({ points }: ObservedRun): number {
  return Math.max(...points.map(({ observedPowerKw }) => observedPowerKw));
}

/** (greatest − least) ÷ mean, in per cent. */
function spreadPct(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.length < 2 ? 0 : (100 * (Math.max(...values) - Math.min(...values))) / mean;
}
