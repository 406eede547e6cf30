import type { Transaction } from "@buildproof/database";
import {
  type DynoCertificateDocument,
  type DynoFigures,
  dynoCertificatePdf,
  type MeasuredState,
} from "@buildproof/documents";
import { z } from "zod";
import { ok } from "../core/result";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { codeOf } from "./compare-sessions";
import { refuse } from "./dyno-refusals";
import { meanPoints, sessionFigures } from "./session-figures";
import { readSessions, type SessionRecord } from "./session-record";

/** The dyno certificate of a job, as PDF: what was measured, when, in what air, and the released verdict. */
export const readDynoCertificate = query({
  name: "dyno.read-certificate",
  permission: "dyno:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx }, { jobId }) {
    const job = await tx.job.findUnique({ where: { id: jobId }, select: jobSelect });
    if (!job) return refuse("job-not-found");
    const verdict = await tx.verdict.findFirst({
      where: { jobId },
      orderBy: [{ at: "desc" }, { id: "desc" }],
    });
    if (!verdict) return refuse("verdict-not-released");
    const [baseline] = await readSessions(tx, { id: verdict.baselineId });
    const [proof] = await readSessions(tx, { id: verdict.proofId });
    if (!baseline || !proof) throw new Error(`verdict ${verdict.id} rests on sessions that are not there`);
    const site = await readLetterHead(tx);
    const document: DynoCertificateDocument = {
      workshop: site.letterHead,
      customer: { name: job.customer.name },
      vehicle: {
        description: job.vehicle.vehicleModel.name,
        plate: job.vehicle.plate,
        vin: job.vehicle.vin,
        odometerKm: job.vehicle.odometerKm,
      },
      jobNumber: String(job.number),
      dyno: figuresOf(baseline, proof, verdict, site.timeZone),
      operator: await operatorOf(tx, proof),
      issuedOn: dateInZone(verdict.at, site.timeZone),
      // The instant of the verdict, not of the printing: the same certificate is the same bytes.
      madeAt: verdict.at.toISOString(),
    };
    return ok({ name: `dyno-certificate-job-${job.number}.pdf`, bytes: await dynoCertificatePdf(document) });
  },
});

const jobSelect = {
  number: true,
  customer: { select: { name: true } },
  vehicle: {
    select: { plate: true, vin: true, odometerKm: true, vehicleModel: { select: { name: true } } },
  },
} as const;

type ReleasedFigures = {
  readonly sentence: string;
  readonly promisedLowKw: number;
  readonly promisedHighKw: number;
};

function figuresOf(
  baseline: SessionRecord,
  proof: SessionRecord,
  { sentence, promisedLowKw, promisedHighKw }: ReleasedFigures,
  timeZone: string,
): DynoFigures {
  const before = measuredState(baseline, timeZone);
  const after = measuredState(proof, timeZone);
  if (!after) throw new Error(`a verdict was released on session ${proof.id} without a run that counts`);
  return {
    at: "hubs",
    correction: codeOf(proof),
    smoothingRpm: proof.smoothingRpm,
    ...(before ? { baseline: before } : {}),
    proof: after,
    promise: { lowKw: promisedLowKw, highKw: promisedHighKw },
    verdict: sentence,
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

async function operatorOf(tx: Transaction, { operatorId }: SessionRecord): Promise<string> {
  const person = operatorId ? await tx.person.findUnique({ where: { id: operatorId } }) : null;
  return person?.name ?? "not recorded";
}

async function readLetterHead(tx: Transaction) {
  const workshop = await tx.workshop.findFirstOrThrow({ select: { name: true } });
  const site = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
  const { taxNumber: abn, phone, email, timeZone } = site;
  const address = site.address.split(/\n|, /);
  return { letterHead: { name: workshop.name, abn, address, phone, email }, timeZone };
}
