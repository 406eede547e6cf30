import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { command, type PersonWork, query } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import { moveJob } from "../jobs/move-job";
import { type CheckInFacts, checkInFacts } from "./check-in-facts";
import { refuse } from "./floor-refusals";
import { lockJob } from "./lock-job";
import { isInTheBuilding } from "./working-job";

const jobId = z.uuid("Open the job again from your day.");
const sha256 = z.string().regex(/^[0-9a-f]{64}$/, "A photo has not arrived at the workshop. Take it again.");

export const fuelGrades = [91, 95, 98] as const;

const checkInInput = z.strictObject({
  jobId,
  odometerKm: z
    .number({ error: "Read the odometer and enter it in whole kilometres, such as 24310." })
    .int("Enter the odometer in whole kilometres.")
    .min(0, "An odometer does not read less than nothing. Read it again.")
    .max(2_000_000, "That is more than an odometer reads. Read it again."),
  keys: z
    .number({ error: "Count the keys and enter how many." })
    .int("Count whole keys.")
    .min(1, "At least one key comes with the vehicle. Count them again.")
    .max(20, "That is too many keys for one vehicle. Count them again."),
  fuelOctane: z
    .number({ error: "Choose the grade of the fuel." })
    .refine((octane) => fuelGrades.some((grade) => grade === octane), "Choose 91, 95 or 98.")
    .optional(),
  ethanolPct: z
    .number({ error: "Enter the ethanol content in per cent, such as 8." })
    .min(0, "Ethanol content is between 0 and 100 %.")
    .max(100, "Ethanol content is between 0 and 100 %.")
    .optional(),
  condition: z
    .string()
    .trim()
    .min(3, "Walk round and write what you see; “no marks” if there are none.")
    .max(2_000, "The condition has at most 2,000 characters. Shorten it."),
  photos: z.array(sha256).max(30, "At most 30 photos go with a check-in.").default([]),
  /** Codes of the notices that were said. */
  told: z.array(z.string()).default([]),
});

type Arrived = z.output<typeof checkInInput>;

/** What the check-in of a job asks and tells; or the check-in itself where it is done. */
export const readCheckIn = query({
  name: "floor.read-check-in",
  permission: "check-in:write",
  input: z.strictObject({ jobId }),
  async run({ tx, now }, input) {
    const facts = await checkInFacts(tx, input.jobId, now);
    if (!facts) return refuse("job-not-found");
    const { job } = facts;
    const done = await tx.checkIn.findUnique({
      where: { workshopId_jobId: { workshopId: job.workshopId, jobId: job.id } },
    });
    const by = done ? await tx.person.findUnique({ where: { id: done.personId } }) : null;
    return ok({
      jobId: job.id,
      number: job.number,
      status: job.status,
      statusWords: jobStatusWords[job.status],
      timeZone: facts.timeZone,
      plate: job.vehicle.plate,
      vin: job.vehicle.vin,
      model: job.vehicle.vehicleModel.name,
      customer: job.customer.name,
      knownOdometerKm: job.vehicle.odometerKm,
      isDiesel: job.vehicle.fuelKind === "diesel",
      usualOctane: job.vehicle.fuelOctane,
      needsFuelSample: facts.needsFuelSample,
      notices: facts.notices,
      inspection: facts.inspection(job.vehicle.odometerKm),
      done: done && { ...done, by: by?.name ?? "" },
    });
  },
});

/** Takes the vehicle in: what was told, how it looks, what it has run, its keys and its fuel. */
export const checkIn = command({
  name: "floor.check-in",
  permission: "check-in:write",
  input: checkInInput,
  async run(work, input) {
    const { tx, workshopId, person, now } = work;
    if (!(await lockJob(work, input.jobId))) return refuse("job-not-found");
    const facts = await checkInFacts(tx, input.jobId, now);
    if (!facts) return refuse("job-not-found");
    const allowed = await mayTakeIn(work, facts, input);
    if (!allowed.ok) return allowed;
    const { notices, job } = facts;
    const id = newId();
    const { told: _, ...seen } = input;
    await tx.checkIn.create({
      data: {
        ...seen,
        id,
        workshopId,
        fuelOctane: seen.fuelOctane ?? null,
        ethanolPct: seen.ethanolPct ?? null,
        told: notices.map(({ sentence }) => sentence),
        personId: person.id,
        at: now,
      },
    });
    await tx.vehicle.updateMany({
      where: { id: job.vehicleId, odometerKm: { lt: input.odometerKm } },
      data: { odometerKm: input.odometerKm, revision: { increment: 1 } },
    });
    work.audit({
      entity: "check-in",
      entityId: id,
      after: { ...input, told: notices.map(({ code }) => code) },
    });
    const moved = await moveJob(work, job.id, "checkedIn");
    if (!moved.ok) return moved;
    return ok({ jobId: job.id, renewInspection: facts.inspection(input.odometerKm) });
  },
});

async function mayTakeIn(
  { tx, workshopId }: PersonWork,
  facts: CheckInFacts,
  input: Arrived,
): Promise<Result<null>> {
  const { job, notices } = facts;
  const status = jobStatusWords[job.status];
  if (isInTheBuilding(job.status) || job.status === "handedOver")
    return refuse("already-checked-in", { status });
  if (job.status !== "booked") return refuse("not-booked", { status });
  const points = notices.filter(({ code }) => !input.told.includes(code)).map(({ sentence }) => sentence);
  if (points.length > 0) return refuse("not-told", { points });
  const known = job.vehicle.odometerKm;
  if (input.odometerKm < known)
    return atField("odometerKm", refuse("odometer-below-known", { known: known.toLocaleString("en-AU") }));
  if (job.vehicle.fuelKind !== "diesel" && input.fuelOctane === undefined)
    return atField("fuelOctane", refuse("fuel-grade-missing"));
  if (facts.needsFuelSample && input.ethanolPct === undefined)
    return atField("ethanolPct", refuse("ethanol-missing"));
  const kept = await tx.storedFile.count({
    where: { workshopId, sha256: { in: input.photos }, mediaType: { startsWith: "image/" } },
  });
  return kept === new Set(input.photos).size ? ok(null) : refuse("photo-not-kept");
}
