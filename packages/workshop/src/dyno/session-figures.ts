import { meanCurve, type Peak, type RunPoint, repeatability } from "@buildproof/engineering";
import { countedRuns, type SessionRecord } from "./session-record";

/** The mean of the runs that count: what a session has to say, with how well its runs agree. */
export type SessionFigures = {
  readonly runs: number;
  readonly peakPower: Peak | null;
  readonly peakTorque: Peak | null;
  readonly observedPeakPower: Peak | null;
  readonly observedPeakTorque: Peak | null;
  readonly peakBoostKPa: number | null;
  /** Of the corrected peaks and of the mean powers, whichever is wider. */
  readonly spreadPct: number;
  readonly spreadLimitPct: number;
  readonly isRepeatable: boolean;
  readonly enoughRuns: boolean;
};

/** The mean curve with its channels; empty when no run counts. */
export function meanPoints(session: Pick<SessionRecord, "runs" | "factor">): readonly RunPoint[] {
  const runs = countedRuns(session);
  const byRpm = runs.map(({ points }) => new Map(points.map((point) => [point.engineRpm, point])));
  return meanCurve(runs).map((point) => {
    const same = byRpm.flatMap((points) => points.get(point.engineRpm) ?? []);
    const channel = (name: "boostKPa" | "lambda" | "fuelRailMPa" | "intakeTempC") =>
      meanOf(same.flatMap((each) => each[name] ?? []));
    return {
      ...point,
      observedTorqueNm: point.correctedTorqueNm / session.factor,
      boostKPa: channel("boostKPa"),
      lambda: channel("lambda"),
      fuelRailMPa: channel("fuelRailMPa"),
      intakeTempC: channel("intakeTempC"),
    };
  });
}

export function sessionFigures(session: SessionRecord): SessionFigures {
  const runs = countedRuns(session);
  const points = meanPoints(session);
  const agreement = repeatability(runs);
  const boosts = points.flatMap(({ boostKPa }) => boostKPa ?? []);
  return {
    runs: runs.length,
    peakPower: peakOf(points, (point) => point.correctedPowerKw),
    peakTorque: peakOf(points, (point) => point.correctedTorqueNm),
    observedPeakPower: peakOf(points, (point) => point.observedPowerKw),
    observedPeakTorque: peakOf(points, (point) => point.observedTorqueNm),
    peakBoostKPa: boosts.length > 0 ? Math.max(...boosts) : null,
    spreadPct: Math.max(agreement.peakSpreadPct, agreement.meanSpreadPct),
    spreadLimitPct: agreement.limitPct,
    isRepeatable: agreement.repeatable,
    enoughRuns: agreement.enoughRuns,
  };
}

function peakOf(points: readonly RunPoint[], measure: (point: RunPoint) => number): Peak | null {
  let peak: Peak | null = null;
  for (const point of points) {
    const value = measure(point);
    if (peak === null || value > peak.value) peak = { engineRpm: point.engineRpm, value };
  }
  return peak;
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}
