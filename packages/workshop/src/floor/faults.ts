import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { doneAt } from "./enter-step";
import { refuse } from "./floor-refusals";
import { deviceTime } from "./record-step";
import { workingJob } from "./working-job";

/** A fault found on the floor: a sentence, a photo if there is one; the desk takes it from there. */
export const raiseFault = command({
  name: "floor.raise-fault",
  permission: "floor:write",
  input: z.strictObject({
    jobId: z.uuid("Open the card again."),
    stepId: z.uuid("Open the card again.").optional(),
    /** When it was found, by the device. */
    at: deviceTime.optional(),
    sentence: z
      .string()
      .trim()
      .min(5, "Say in a sentence what you found, so that the desk can tell the customer.")
      .max(500, "A fault has at most 500 characters. Shorten it."),
    photoSha256: z
      .string()
      .regex(/^[0-9a-f]{64}$/, "The photo has not arrived at the workshop. Take it again.")
      .optional(),
  }),
  async run(work, { jobId, stepId, at, sentence, photoSha256 }) {
    const { tx, workshopId, person, now } = work;
    const job = await workingJob(work, jobId);
    if (!job.ok) return job;
    const step = stepId ? await tx.jobStep.findUnique({ where: { id: stepId } }) : null;
    if (stepId && step?.jobId !== jobId) return refuse("step-not-found");
    if (photoSha256) {
      const photo = await tx.storedFile.findUnique({
        where: { workshopId_sha256: { workshopId, sha256: photoSha256 } },
      });
      if (!photo?.mediaType.startsWith("image/")) return refuse("photo-not-kept");
    }
    const id = newId();
    await tx.fault.create({
      data: {
        id,
        workshopId,
        jobId,
        stepId: stepId ?? null,
        sentence,
        photoSha256: photoSha256 ?? null,
        raisedById: person.id,
        raisedAt: doneAt(at, now),
      },
    });
    work.audit({ entity: "fault", entityId: id, after: { job: jobId, sentence } });
    return ok({ faultId: id, jobId });
  },
});

/** A manager settles a fault and says why it no longer stands in the way. */
export const clearFault = command({
  name: "floor.clear-fault",
  permission: "floor:write",
  input: z.strictObject({
    faultId: z.uuid("Open the card again."),
    because: z
      .string()
      .trim()
      .min(10, "Say in at least 10 characters how it was settled; it is recorded with your name.")
      .max(500, "A reason has at most 500 characters. Shorten it."),
  }),
  async run(work, { faultId, because }) {
    if (!work.person.roles.includes("manager")) return refuse("clear-needs-manager");
    const fault = await work.tx.fault.findUnique({ where: { id: faultId } });
    if (!fault) return refuse("fault-not-found");
    const { count } = await work.tx.fault.updateMany({
      where: { id: faultId, clearedAt: null },
      data: { clearedAt: work.now, clearedBecause: because },
    });
    if (count === 0) return refuse("fault-cleared");
    work.audit({ entity: "fault", entityId: faultId, after: { cleared: because } });
    return ok({ faultId, jobId: fault.jobId });
  },
});
