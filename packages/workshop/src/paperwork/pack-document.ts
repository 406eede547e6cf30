import type { Transaction } from "@buildproof/database";
import type { HandOverPackDocument } from "@buildproof/documents";
import { addressLines, letterHead } from "../core/letter-head";
import { dateInZone } from "../core/site-date";
import { kitListOf, selectionOf } from "../jobs/accepted-selection";
import { ownSteps, type StepState, stepStates } from "../jobs/step-progress";
import { dateWords, momentWords } from "../planning-desk/time-words";
import { packDyno } from "./pack-dyno";

export function readPackJob(tx: Transaction, jobId: string) {
  return tx.job.findUnique({
    where: { id: jobId },
    include: {
      customer: true,
      vehicle: { include: { vehicleModel: { select: { name: true } } } },
      quote: { select: { number: true } },
      version: true,
      handOver: true,
      obligations: { include: { evidence: { orderBy: { at: "asc" } } }, orderBy: { position: "asc" } },
    },
  });
}

export type PackJob = NonNullable<Awaited<ReturnType<typeof readPackJob>>>;

type HandedOver = NonNullable<PackJob["handOver"]>;

/** What goes with the keys, from the job's own record. */
export async function packDocument(
  tx: Transaction,
  job: PackJob,
  handOver: HandedOver,
): Promise<HandOverPackDocument> {
  const site = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
  const { timeZone } = site;
  const steps = ownSteps(await stepStates(tx, job.id));
  const dyno = await packDyno(tx, job.id, timeZone);
  const { customer, vehicle, version } = job;
  return {
    workshop: letterHead(site),
    customer: {
      name: customer.name,
      ...(customer.address ? { address: addressLines(customer.address) } : {}),
      email: customer.email,
      phone: customer.phone,
    },
    vehicle: {
      description: vehicle.vehicleModel.name,
      plate: vehicle.plate,
      vin: vehicle.vin,
      odometerKm: handOver.odometerKm,
    },
    jobNumber: String(job.number),
    quote: { number: String(job.quote.number), version: version.versionNo },
    handedOverOn: dateInZone(handOver.at, timeZone),
    madeAt: handOver.at.toISOString(),
    workDone: [...new Set(steps.map(({ operationName }) => operationName))],
    parts: [...(await fittedParts(tx, job)), ...recordedNumbers(steps)],
    torques: loggedValues(steps, timeZone),
    ...(dyno ? { dyno } : {}),
    certificates: certificatesOf(job, timeZone),
    cautions: version.cautions,
    followUps: followUpsOf(handOver),
  };
}

async function fittedParts(tx: Transaction, job: PackJob): Promise<HandOverPackDocument["parts"]> {
  const kit = await kitListOf(tx, selectionOf(job.version.selection));
  return kit.map(({ name, maker, quantity }) => ({
    name: quantity === 1 ? name : `${quantity} × ${name}`,
    code: maker === "workshop" ? "" : maker,
  }));
}

/** Serials, licences and file hashes, as they were written on the job card. */
function recordedNumbers(steps: readonly StepState[]): HandOverPackDocument["parts"] {
  return steps.flatMap(({ kind, text, operationName, done }) =>
    kind === "serial" && done?.text ? [{ name: text, code: operationName, serial: done.text }] : [],
  );
}

function loggedValues(steps: readonly StepState[], timeZone: string): HandOverPackDocument["torques"] {
  return steps.flatMap(({ operationName, text, unit, low, high, done }) => {
    if (!done || done.value === null || low === null || high === null) return [];
    const what = `${operationName}: ${text}`;
    return [{ what, value: done.value, unit, low, high, by: done.by, at: momentWords(done.at, timeZone) }];
  });
}

function certificatesOf(job: PackJob, timeZone: string): HandOverPackDocument["certificates"] {
  return job.obligations
    .filter(({ evidenceKind }) => evidenceKind === "certificate" || evidenceKind === "report")
    .flatMap(({ title, evidence }) =>
      evidence.map(({ note, name, signatoryName, at }) => ({
        name: title,
        number: note || name,
        signedBy: signatoryName,
        on: dateInZone(at, timeZone),
      })),
    );
}

function followUpsOf({ followUpOn }: HandedOver): HandOverPackDocument["followUps"] {
  if (!followUpOn) return [];
  return [
    {
      what: "Re-torque visit at 500 to 1,000 km",
      when: `agreed for ${dateWords(followUpOn)}`,
    },
  ];
}
