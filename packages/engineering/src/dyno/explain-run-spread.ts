import type { RunChannel } from "./run-row";
import type { HeatSoak, OutlierReason, RunStanding } from "./run-spread";

const WORDS: Readonly<Record<RunChannel, (reason: OutlierReason) => string>> = {
  boostKPa: ({ difference }) => `${by(difference, 0)} kPa ${difference > 0 ? "more" : "less"} boost`,
  lambda: ({ difference }) => `a mixture ${by(difference, 3)} lambda ${difference > 0 ? "leaner" : "richer"}`,
  fuelRailMPa: ({ difference }) =>
    `${by(difference, 1)} MPa ${difference > 0 ? "more" : "less"} rail pressure`,
  intakeTempC: ({ difference }) =>
    `intake air ${by(difference, 0)} °C ${difference > 0 ? "hotter" : "cooler"}`,
};

/** Why a run stands apart, in one sentence that says what to do; null where it does not. */
export function explainOutlier({ isOutlier, offOthersPct, reasons }: RunStanding): string | null {
  if (!isOutlier) return null;
  const off = `${by(offOthersPct, 1)} % ${offOthersPct > 0 ? "above" : "below"} the others`;
  if (reasons.length === 0)
    return `${off}, and no channel of the log says why: look at throttle, tie-down and wheel slip, then run again.`;
  return `${off}, with ${reasons.map((reason) => WORDS[reason.channel](reason)).join(", ")}: put that right, then run again.`;
}

/** The trend over the runs in one sentence. */
export function explainHeatSoak({ powerPctPerRun, intakeKPerRun, isSoaking }: HeatSoak): string {
  const air = intakeKPerRun === null ? "" : ` while the intake air ${warms(intakeKPerRun)}`;
  const power = `Power ${powerPctPerRun < 0 ? "falls" : "rises"} by ${by(powerPctPerRun, 1)} % from run to run${air}`;
  return isSoaking
    ? `${power}: heat soak; let it cool to the same temperature before every run.`
    : `${power}: no heat soak to speak of.`;
}

function warms(kPerRun: number): string {
  return `${kPerRun < 0 ? "cools" : "warms"} by ${by(kPerRun, 1)} °C`;
}

function by(value: number, decimals: number): string {
  return Math.abs(value).toFixed(decimals);
}
