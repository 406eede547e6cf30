import type { Transaction } from "@buildproof/database";
import type { HandOverPackDocument } from "@buildproof/documents";
import { z } from "zod";
import { dateInZone } from "../core/site-date";

type DynoFigures = NonNullable<HandOverPackDocument["dyno"]>;
type MeasuredState = DynoFigures["proof"];

const storedCurve = z.array(z.object({ engineRpm: z.number(), powerKw: z.number() }));

/** Before and after with the verdict, as it was released; undefined when the job has none. */
export async function packDyno(
  tx: Transaction,
  jobId: string,
  timeZone: string,
): Promise<DynoFigures | undefined> {
  const verdict = await tx.verdict.findFirst({ where: { jobId }, orderBy: { at: "desc" } });
  if (!verdict) return undefined;
  const proof = await readSession(tx, verdict.proofId);
  const measured = proof && stateOf(proof, timeZone);
  if (!measured) return undefined;
  const baseline = await readSession(tx, verdict.baselineId);
  const before = baseline && stateOf(baseline, timeZone);
  return {
    at: "hubs",
    correction: `${proof.standard} ${proof.edition}`,
    smoothingRpm: proof.smoothingRpm,
    proof: measured,
    ...(before ? { baseline: before } : {}),
    promise: { lowKw: verdict.promisedLowKw, highKw: verdict.promisedHighKw },
    verdict: verdict.sentence,
  };
}

function readSession(tx: Transaction, id: string) {
  return tx.dynoSession.findUnique({
    where: { id },
    include: { runs: { where: { excludedBecause: null }, orderBy: { number: "asc" } } },
  });
}

type Session = NonNullable<Awaited<ReturnType<typeof readSession>>>;

/** The mean of the runs that count; null when none does. */
function stateOf(session: Session, timeZone: string): MeasuredState | null {
  const { runs } = session;
  const strongest = [...runs].sort((a, b) => b.peakKw - a.peakKw)[0];
  if (!strongest) return null;
  const mean = (figure: (run: Session["runs"][number]) => number) =>
    runs.reduce((sum, run) => sum + figure(run), 0) / runs.length;
  const peaks = runs.map(({ peakKw }) => peakKw);
  const peakPowerKw = mean(({ peakKw }) => peakKw);
  return {
    powerKw: meanPower(runs.map(({ curve }) => storedCurve.parse(curve))),
    peakPowerKw,
    peakPowerRpm: mean(({ peakKwAtRpm }) => peakKwAtRpm),
    peakTorqueNm: mean(({ peakNm }) => peakNm),
    peakTorqueRpm: mean(({ peakNmAtRpm }) => peakNmAtRpm),
    runs: runs.length,
    spreadPct: ((Math.max(...peaks) - Math.min(...peaks)) / peakPowerKw) * 100,
    barometerKPa: session.barometerKPa,
    airTempC: session.airTempC,
    relativeHumidityPct: session.relativeHumidityPct,
    factor: session.factor,
    measuredOn: dateInZone(session.doneAt, timeZone),
  };
}

/** The runs lie on one grid of engine speeds; where all of them have a point, their mean is drawn. */
function meanPower(curves: readonly z.output<typeof storedCurve>[]): MeasuredState["powerKw"] {
  const sums = new Map<number, { kw: number; runs: number }>();
  for (const { engineRpm, powerKw } of curves.flat()) {
    const seen = sums.get(engineRpm) ?? { kw: 0, runs: 0 };
    sums.set(engineRpm, { kw: seen.kw + powerKw, runs: seen.runs + 1 });
  }
  return [...sums]
    .filter(([, { runs }]) => runs === curves.length)
    .sort(([a], [b]) => a - b)
    .map(([speedRpm, { kw, runs }]) => ({ speedRpm, value: kw / runs }));
}
