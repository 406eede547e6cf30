import type { Transaction } from "@buildproof/database";
import { inspectionStands } from "../builds/inspection-limits";
import { isoDateOf } from "../core/site-date";
import { dateWords } from "../planning-desk/time-words";
import type { GateJob } from "./gate-job";
import { type GatePoint, gatePoint } from "./gate-point";

export type GateInspection = Awaited<ReturnType<typeof newestInspection>>;

/** The newest inspection of the vehicle, whichever build it was made for. */
export function newestInspection(tx: Transaction, vehicleId: string) {
  return tx.inspection.findFirst({ where: { vehicleId }, orderBy: { doneAt: "desc" } });
}

const title = "Pre-build inspection";
const resolve = "Technician: inspect the vehicle and record the readings on its build.";

/** Whether the newest inspection speaks for the vehicle on the day the work starts. */
export function inspectionPoint(
  inspection: GateInspection,
  job: GateJob,
  startsOn: string,
  isAskedFor: boolean,
): GatePoint {
  const head = { point: "inspection", title, resolve, place: "build" as const };
  if (!inspection) {
    return isAskedFor
      ? gatePoint({ ...head, met: false, sentence: "This vehicle has no pre-build inspection yet." })
      : gatePoint({
          ...head,
          met: true,
          sentence: "Nothing that was accepted asks for an inspection first.",
        });
  }
  if (inspection.outcome === "failed") {
    const reasons = inspection.reasons.join(" ");
    const sentence = `The vehicle failed its pre-build inspection. ${reasons}`.trim();
    return gatePoint({ ...head, met: false, safety: true, sentence });
  }
  const validUntil = isoDateOf(inspection.validUntil);
  const { odometerKm } = job.vehicle;
  const limits = `valid until ${dateWords(inspection.validUntil)} and ${inspection.validToOdometerKm.toLocaleString("en-AU")} km`;
  const stands = inspectionStands(
    { outcome: "passed", validUntil, validToOdometerKm: inspection.validToOdometerKm },
    { today: startsOn, odometerKm },
  );
  if (stands || !isAskedFor) return gatePoint({ ...head, met: true, sentence: `Passed, ${limits}.` });
  return gatePoint({
    ...head,
    met: false,
    sentence: `The inspection passed but no longer speaks for the vehicle: it was ${limits}, the odometer shows ${odometerKm.toLocaleString("en-AU")} km.`,
  });
}
