import type { Transaction } from "@buildproof/database";
import type { DynoFigures, MeasuredState } from "@buildproof/documents";
import { dateInZone } from "../core/site-date";
import { codeOf, compareSessions } from "./compare-sessions";
import { meanPoints, sessionFigures } from "./session-figures";
import { readSessions, type SessionRecord } from "./session-record";

type ReleasedVerdict = {
  readonly baselineId: string;
  readonly proofId: string;
  readonly sentence: string;
  readonly promisedLowKw: number;
  readonly promisedHighKw: number;
};

/**
 * Before and after as every document tells them, with the verdict as it was released. Null where no run of the
 * proof counts: there is nothing to tell then.
 */
export async function releasedFigures(
  tx: Transaction,
  verdict: ReleasedVerdict,
  timeZone: string,
): Promise<{ readonly figures: DynoFigures; readonly proof: SessionRecord } | null> {
  const [baseline] = await readSessions(tx, { id: verdict.baselineId });
  const [proof] = await readSessions(tx, { id: verdict.proofId });
  if (!baseline || !proof) throw new Error("a verdict rests on sessions that are not there");
  const before = measuredState(baseline, timeZone);
  const after = measuredState(proof, timeZone);
  if (!after) return null;
  const { sentence, promisedLowKw, promisedHighKw } = verdict;
  return {
    proof,
    figures: {
      at: "hubs",
      correction: codeOf(proof),
      smoothingRpm: proof.smoothingRpm,
      ...(before ? { baseline: before } : {}),
      proof: after,
      promise: { lowKw: promisedLowKw, highKw: promisedHighKw },
      verdict: sentence,
      obstacles: compareSessions(baseline, proof)?.obstacles ?? [],
    },
  };
}

function measuredState(session: SessionRecord, timeZone: string): MeasuredState | null {
  const { peakPower, peakTorque, runs, spreadPct } = sessionFigures(session);
  if (!peakPower || !peakTorque) return null;
  const { barometerKPa, airTempC, relativeHumidityPct, factor, doneAt } = session;
  return {
    powerKw: meanPoints(session).map(({ engineRpm, correctedPowerKw }) => ({
      speedRpm: engineRpm,
      value: correctedPowerKw,
    })),
    peakPowerKw: peakPower.value,
    peakPowerRpm: peakPower.engineRpm,
    peakTorqueNm: peakTorque.value,
    peakTorqueRpm: peakTorque.engineRpm,
    runs,
    spreadPct,
    barometerKPa,
    airTempC,
    relativeHumidityPct,
    factor,
    measuredOn: dateInZone(doneAt, timeZone),
  };
}
