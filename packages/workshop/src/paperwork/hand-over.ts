import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { readSite } from "../core/site";
import { dateInZone, storedDate } from "../core/site-date";
import { command, type PersonWork } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import { moveJob } from "../jobs/move-job";
import { followUpCode } from "./obligation-states";
import { refuse } from "./paperwork-refusals";
import { recordEvidence } from "./record-evidence";
import { readStanding, type Standing, settleDone } from "./settle-job";

const handOverInput = z.strictObject({
  jobId: z.uuid("Open the job again and hand over from there."),
  revision,
  receivedBy: z.string().trim().min(2, "Enter the name of whoever takes the vehicle.").max(200),
  odometerKm: z
    .number("Enter the odometer in whole kilometres.")
    .int("Enter the odometer in whole kilometres.")
    .min(0, "Enter the odometer in whole kilometres.")
    .max(2_000_000, "Enter the odometer in whole kilometres."),
  keys: z
    .number("Enter how many keys go back.")
    .int("Enter how many keys go back.")
    .min(1, "At least one key goes back with the vehicle.")
    .max(20, "Enter how many keys go back."),
  followUpOn: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, "Choose the day of the follow-up visit.")
    .nullable()
    .default(null),
  note: z.string().trim().max(2_000, "Keep the note under 2,000 characters.").default(""),
});

type Given = z.output<typeof handOverInput>;

/** Hands the vehicle to its owner. Refused with every open point; the database refuses as well. */
export const handOver = command({
  name: "paperwork.hand-over",
  permission: "hand-over:write",
  input: handOverInput,
  async run(work, given) {
    const { tx, workshopId, person, now, audit } = work;
    const { jobId, receivedBy, odometerKm, keys, followUpOn, note } = given;
    const job = await readLeavingJob(tx, jobId);
    if (!job) return refuse("job-not-found");
    if (job.status === "handedOver") return refuse("already-handed-over");
    if (job.revision !== given.revision) return refuse("job-stale");
    const standing = await readStanding(tx, jobId);
    if (!standing) return refuse("job-not-found");
    const points = openPointsOf(job, standing);
    if (points.length > 0) return refuse("hand-over-open", { points });
    const checked = await checkGiven(work, job, standing, given);
    if (!checked.ok) return checked;
    const settled = await settleDone(work, jobId);
    if (!settled.ok) return settled;
    await recordEvidence(work, { number: job.number, followUpOn }, standing.obligations);
    await tx.handOver.create({
      data: {
        id: newId(),
        workshopId,
        jobId,
        odometerKm,
        receivedBy,
        keys,
        followUpOn: followUpOn ? storedDate(followUpOn) : null,
        note,
        personId: person.id,
        at: now,
      },
    });
    const moved = await moveJob(work, jobId, "handedOver");
    if (!moved.ok) return moved;
    await tx.vehicle.updateMany({
      where: { id: job.vehicleId, odometerKm: { lt: odometerKm } },
      data: { odometerKm, revision: { increment: 1 } },
    });
    audit({ entity: "job", entityId: jobId, after: { receivedBy, odometerKm, keys, followUpOn } });
    return ok({ jobId, number: job.number });
  },
});

function readLeavingJob(tx: Transaction, jobId: string) {
  return tx.job.findUnique({ where: { id: jobId }, include: { checkIn: true, vehicle: true } });
}

type LeavingJob = NonNullable<Awaited<ReturnType<typeof readLeavingJob>>>;

const beforeWork = ["waiting", "booked", "stopped"];

function openPointsOf(job: LeavingJob, { points }: Standing): readonly string[] {
  const early = beforeWork.includes(job.status)
    ? [`The job is ${jobStatusWords[job.status]}: its work has not been done.`]
    : [];
  return [...early, ...points.map(({ sentence }) => sentence)];
}

/** What is written down at the keys, against what was written down when the vehicle came in. */
async function checkGiven(
  { tx, now }: PersonWork,
  { checkIn, vehicle }: LeavingJob,
  { obligations }: Standing,
  { odometerKm, keys, followUpOn, note }: Given,
): Promise<Result<null>> {
  const lastKm = Math.max(checkIn?.odometerKm ?? 0, vehicle.odometerKm);
  if (odometerKm < lastKm) return refuse("odometer-back", { lastKm });
  if (checkIn && keys < checkIn.keys && note.length < 10)
    return refuse("keys-missing", { taken: checkIn.keys });
  const { timeZone } = await readSite(tx);
  if (followUpOn && followUpOn < dateInZone(now, timeZone)) return refuse("follow-up-past");
  const isAsked = obligations.some(({ code, met }) => code === followUpCode && !met);
  if (isAsked && !followUpOn) return refuse("follow-up-missing");
  return ok(null);
}
