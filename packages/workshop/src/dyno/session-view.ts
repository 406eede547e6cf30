import type { Transaction } from "@buildproof/database";
import { saturationPressure } from "@buildproof/engineering";
import { celsius, kelvinFromCelsius } from "@buildproof/units";
import { isBarred } from "./barred-run";
import { codeOf } from "./compare-sessions";
import { type CorrectionDetails, correctionDetails } from "./correction-details";
import { type LimitedReading, limitReadings } from "./limit-readings";
import type { MeasuredEngine } from "./measured-engine";
import { type RepeatabilityDetails, repeatabilityDetails } from "./repeatability-details";
import { meanPoints, type SessionFigures, sessionFigures } from "./session-figures";
import type { RunRecord, SessionRecord } from "./session-record";

/** A session as the dyno page shows it. */
export type SessionView = Omit<SessionRecord, "runs" | "vehicleId" | "buildId" | "jobId"> & {
  readonly code: string;
  readonly dryPressureKPa: number;
  readonly correction: CorrectionDetails | null;
  readonly operator: string;
  /** A verdict rests on it, so its runs stay as they are. */
  readonly isSettled: boolean;
  readonly figures: SessionFigures;
  readonly repeatability: RepeatabilityDetails;
  readonly points: readonly ViewPoint[];
  readonly runs: readonly RunView[];
  readonly readings: readonly LimitedReading[];
};

export type ViewPoint = RunRecord["reduced"]["points"][number];

export type RunView = {
  readonly id: string;
  readonly number: number;
  readonly observedPeakKw: number;
  readonly observedPeakNm: number;
  readonly peakKw: number;
  readonly peakKwAtRpm: number;
  readonly peakNm: number;
  readonly peakNmAtRpm: number;
  readonly warnings: readonly string[];
  readonly excludedBecause: string | null;
  /** The furthest that engine and hubs strayed from the ratio; null where the log has no speed of the hubs. */
  readonly slipPct: number | null;
  /** It went past an abort limit or slipped, so nobody may count it again. */
  readonly isBarred: boolean;
  readonly points: readonly ViewPoint[];
};

type ViewContext = {
  readonly engine: MeasuredEngine;
  readonly names: ReadonlyMap<string, string>;
  /** Ids of the sessions on which a verdict rests. */
  readonly settled: ReadonlySet<string>;
};

export function sessionView(session: SessionRecord, { engine, names, settled }: ViewContext): SessionView {
  const { runs, vehicleId: _, buildId: __, jobId: ___, ...rest } = session;
  const points = meanPoints(session);
  return {
    ...rest,
    code: codeOf(session),
    dryPressureKPa: dryPressure(session),
    correction: correctionDetails(session, engine),
    isSettled: settled.has(session.id),
    operator: names.get(session.operatorId ?? "") ?? "not recorded",
    figures: sessionFigures(session),
    repeatability: repeatabilityDetails(session),
    points,
    runs: runs.map((run) => runView(run, session.factor)),
    readings: limitReadings(session, engine),
  };
}

/** Dry air pressure as the correction takes it: the barometer less the vapour. */
function dryPressure({ barometerKPa, airTempC, relativeHumidityPct }: SessionRecord): number {
  return (
    barometerKPa - (relativeHumidityPct / 100) * saturationPressure(kelvinFromCelsius(celsius(airTempC)))
  );
}

function runView({ reduced, ...run }: RunRecord, factor: number): RunView {
  const { peakPower, peakTorque, observedPeakPower, points } = reduced;
  return {
    ...run,
    observedPeakKw: observedPeakPower.value,
    observedPeakNm: peakTorque.value / factor,
    peakKw: peakPower.value,
    peakKwAtRpm: peakPower.engineRpm,
    peakNm: peakTorque.value,
    peakNmAtRpm: peakTorque.engineRpm,
    isBarred: isBarred(run.excludedBecause),
    points,
  };
}

/** The sessions on which a verdict rests. */
export async function settledSessions(
  tx: Transaction,
  sessions: readonly Pick<SessionRecord, "id">[],
): Promise<ReadonlySet<string>> {
  const ids = sessions.map(({ id }) => id);
  const verdicts = await tx.verdict.findMany({
    where: { OR: [{ baselineId: { in: ids } }, { proofId: { in: ids } }] },
    select: { baselineId: true, proofId: true },
  });
  return new Set(verdicts.flatMap(({ baselineId, proofId }) => [baselineId, proofId]));
}

/** Names of the people who ran the dyno, by id. */
export async function operatorNames(
  tx: Transaction,
  sessions: readonly Pick<SessionRecord, "operatorId">[],
): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(sessions.flatMap(({ operatorId }) => operatorId ?? []))];
  const people = await tx.person.findMany({ where: { id: { in: ids } }, select: { id: true, name: true } });
  return new Map(people.map(({ id, name }) => [id, name]));
}
