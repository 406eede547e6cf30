import type { Transaction } from "@buildproof/database";
import type { ChannelExtremes, Peak, ReducedRun, RunChannel, RunPoint } from "@buildproof/engineering";
import type { DynoKind } from "./dyno-fields";
import { gridOf, storedCurve } from "./stored-curve";

/** One run of a kept session, as the calculations take it. */
export type RunRecord = {
  readonly id: string;
  readonly number: number;
  readonly warnings: readonly string[];
  /** Why it is not counted; null when it is. */
  readonly excludedBecause: string | null;
  readonly slipPct: number | null;
  readonly reduced: ReducedRun;
};

/** Runs under one set-up. */
export type SessionRecord = {
  readonly id: string;
  readonly kind: DynoKind;
  readonly vehicleId: string;
  readonly buildId: string | null;
  readonly jobId: string | null;
  readonly standard: string;
  readonly edition: string;
  readonly barometerKPa: number;
  readonly airTempC: number;
  readonly relativeHumidityPct: number;
  readonly aspiration: string | null;
  readonly fuelMgPerLPerCycle: number | null;
  readonly boostRatio: number | null;
  readonly factor: number;
  readonly factorValid: boolean;
  readonly warnings: readonly string[];
  readonly gear: string;
  readonly gearRatio: number | null;
  readonly finalDrive: number | null;
  readonly gearboxOilTempC: number | null;
  readonly rampRpmPerS: number | null;
  readonly smoothingRpm: number;
  readonly operatorId: string | null;
  readonly doneAt: Date;
  readonly sourceSha256: string;
  readonly sourceName: string;
  readonly rowCount: number;
  readonly note: string;
  readonly runs: readonly RunRecord[];
};

type Which = { readonly vehicleId?: string; readonly id?: string };

/** Kept sessions, oldest first, with their runs rebuilt for the calculations. */
export async function readSessions(tx: Transaction, which: Which): Promise<readonly SessionRecord[]> {
  const rows = await tx.dynoSession.findMany({
    where: which,
    include: { runs: { orderBy: { number: "asc" } } },
    orderBy: [{ doneAt: "asc" }, { id: "asc" }],
  });
  return rows.map(({ workshopId: _, runs, ...session }) => ({
    ...session,
    runs: runs.map((run) => ({
      id: run.id,
      number: run.number,
      warnings: run.warnings,
      excludedBecause: run.excludedBecause,
      slipPct: run.slipPct,
      reduced: reducedRun(run, session),
    })),
  }));
}

/** The runs that count. */
export function countedRuns({ runs }: Pick<SessionRecord, "runs">): readonly ReducedRun[] {
  return runs.filter(({ excludedBecause }) => excludedBecause === null).map(({ reduced }) => reduced);
}

/** Rows are counted while a log is reduced; a kept curve has none to leave out. */
const NONE_EXCLUDED: ReducedRun["excluded"] = {
  "not-a-number": 0,
  "speed-spike": 0,
  "not-driving": 0,
  "outside-sweep": 0,
  "outside-band": 0,
};

type RunRow = {
  readonly curve: unknown;
  readonly peakKw: number;
  readonly peakKwAtRpm: number;
  readonly peakNm: number;
  readonly peakNmAtRpm: number;
  readonly observedPeakKw: number;
};

type Correction = Pick<SessionRecord, "factor" | "factorValid" | "smoothingRpm" | "rampRpmPerS" | "rowCount">;

/** What was counted while the log was reduced is in the run's warnings and its slip; the rest is rebuilt from its curve. */
function reducedRun(run: RunRow, session: Correction): ReducedRun {
  const { factor, factorValid, smoothingRpm, rampRpmPerS } = session;
  const points = storedCurve.parse(run.curve).map(
    ({ powerKw, torqueNm, ...channels }): RunPoint => ({
      ...channels,
      observedPowerKw: powerKw / factor,
      observedTorqueNm: torqueNm / factor,
      correctedPowerKw: powerKw,
      correctedTorqueNm: torqueNm,
    }),
  );
  const extremes = (channel: RunChannel) => channelExtremes(points, channel);
  const span = (points.at(-1)?.engineRpm ?? 0) - (points[0]?.engineRpm ?? 0);
  return {
    points,
    peakPower: { engineRpm: run.peakKwAtRpm, value: run.peakKw },
    peakTorque: { engineRpm: run.peakNmAtRpm, value: run.peakNm },
    observedPeakPower: { engineRpm: run.peakKwAtRpm, value: run.observedPeakKw },
    channels: {
      boostKPa: extremes("boostKPa"),
      lambda: extremes("lambda"),
      fuelRailMPa: extremes("fuelRailMPa"),
      intakeTempC: extremes("intakeTempC"),
    },
    drive: null,
    factor,
    correctionValid: factorValid,
    smoothingRpm,
    gridRpm: gridOf(points),
    rampRpmPerS: rampRpmPerS ?? 0,
    durationS: rampRpmPerS ? span / rampRpmPerS : 0,
    rowsRead: points.length,
    rowsUsed: points.length,
    excluded: NONE_EXCLUDED,
    warnings: [],
  };
}

function channelExtremes(points: readonly RunPoint[], channel: RunChannel): ChannelExtremes | null {
  let least: Peak | null = null;
  let greatest: Peak | null = null;
  for (const point of points) {
    const value = point[channel];
    if (value === null) continue;
    const peak = { engineRpm: point.engineRpm, value };
    if (least === null || value < least.value) least = peak;
    if (greatest === null || value > greatest.value) greatest = peak;
  }
  return least && greatest ? { least, greatest } : null;
}
