import type { Transaction } from "@buildproof/database";
import { inspectionStands } from "../builds/inspection-limits";
import { dateInZone, isoDateOf } from "../core/site-date";
import { selectionOf } from "../jobs/accepted-selection";
import { newestInspection } from "../jobs/gate-inspection";
import { readGateJob } from "../jobs/gate-job";
import { asksForInspection, readGateCatalogue } from "../jobs/gate-prerequisites";
import { workOf } from "../planning-desk/block-load";
import { dateWords } from "../planning-desk/time-words";
import { type CheckInNotice, checkInNotices } from "./check-in-notices";

export type CheckInFacts = {
  readonly job: NonNullable<Awaited<ReturnType<typeof readGateJob>>>;
  readonly timeZone: string;
  readonly notices: readonly CheckInNotice[];
  /** The tank's ethanol content matters: the engine will be run at full load on it. */
  readonly needsFuelSample: boolean;
  /** Whether the accepted work rests on an inspection, and where that stands; null when it does not. */
  readonly inspection: (odometerKm: number) => string | null;
};

/** What check-in turns on, read from the job, its card and its accepted version. */
export async function checkInFacts(tx: Transaction, jobId: string, now: Date): Promise<CheckInFacts | null> {
  const job = await readGateJob(tx, jobId);
  if (!job) return null;
  const shared = await readGateCatalogue(tx);
  const { timeZone } = shared.site;
  const work = await workOf(tx, jobId);
  const codes = selectionOf(job.version.selection).map(({ code }) => code);
  const onDyno = work.some(({ place }) => place === "dyno");
  const inspection = await newestInspection(tx, job.vehicleId);
  const isAskedFor = asksForInspection(shared, job);
  return {
    job,
    timeZone,
    needsFuelSample: onDyno && job.vehicle.fuelKind !== "diesel",
    notices: checkInNotices({
      onDyno,
      onRoad: work.some(({ place }) => place === "road"),
      certified: codes.includes("engineer-certificate"),
      calibrated: work.some(({ skill }) => skill === "calibration"),
    }),
    inspection: (odometerKm) =>
      isAskedFor ? lapsedWords(inspection, dateInZone(now, timeZone), odometerKm) : null,
  };
}

/** The sentence that tells the floor to inspect again; null while the inspection stands. */
function lapsedWords(
  inspection: Awaited<ReturnType<typeof newestInspection>>,
  today: string,
  odometerKm: number,
): string | null {
  if (!inspection)
    return "There is no inspection of this vehicle on record. Inspect it before anything is taken apart.";
  if (inspection.outcome === "failed")
    return "The vehicle failed its last inspection. Nothing is taken apart; ask the manager.";
  const validUntil = isoDateOf(inspection.validUntil);
  const { validToOdometerKm } = inspection;
  const stands = inspectionStands(
    { outcome: "passed", validUntil, validToOdometerKm },
    { today, odometerKm },
  );
  return stands
    ? null
    : `The inspection has lapsed: it was good until ${dateWords(inspection.validUntil)} and ${validToOdometerKm.toLocaleString("en-AU")} km. Renew it before anything is taken apart.`;
}
