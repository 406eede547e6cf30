import type { Transaction } from "@buildproof/database";
import { dateInZone } from "../core/site-date";
import { codeOf } from "../dyno/compare-sessions";
import { meanPoints, sessionFigures } from "../dyno/session-figures";
import { readSessions } from "../dyno/session-record";
import type { MeasuredBaseline } from "./power-baseline";

/** The vehicle's newest baseline, where its runs agree and its air is what the correction allows; else null. */
export async function measuredBaseline(
  tx: Transaction,
  vehicleId: string,
  timeZone: string,
): Promise<MeasuredBaseline | null> {
  const newest = await tx.dynoSession.findFirst({
    where: { vehicleId, kind: "baseline" },
    orderBy: [{ doneAt: "desc" }, { id: "desc" }],
    select: { id: true },
  });
  if (!newest) return null;
  const [session] = await readSessions(tx, { id: newest.id });
  if (!session?.factorValid) return null;
  const { runs, spreadPct, enoughRuns, isRepeatable } = sessionFigures(session);
  if (!enoughRuns || !isRepeatable) return null;
  const points = meanPoints(session);
  return {
    sessionId: session.id,
    doneOn: dateInZone(session.doneAt, timeZone),
    runs,
    spreadPct,
    corrected: points.map(({ engineRpm, correctedPowerKw }) => ({
      speedRpm: engineRpm,
      powerKw: correctedPowerKw,
    })),
    observed: points.map(({ engineRpm, observedPowerKw }) => ({
      speedRpm: engineRpm,
      powerKw: observedPowerKw,
    })),
    code: codeOf(session),
  };
}
