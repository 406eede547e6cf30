import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuse } from "./job-refusals";
import { moveJob } from "./move-job";

/** Stops a job for good or for now: its time from here on is free again, and the reason is kept. */
export const stopJob = command({
  name: "jobs.stop",
  permission: "bookings:write",
  input: z.strictObject({
    jobId: z.uuid("Open the job again and stop it from there."),
    reason: z.string().trim().max(1_000, "Keep the reason under 1,000 characters."),
  }),
  async run(work, { jobId, reason }) {
    if (reason.length < 10) return refuse("stop-reason");
    const moved = await moveJob(work, jobId, "stopped");
    if (!moved.ok) return moved;
    await work.tx.job.update({
      where: { id: jobId },
      data: { stoppedAt: work.now, stoppedBecause: reason, resumedAt: null, resumedBecause: "" },
    });
    const freed = await work.tx.booking.updateMany({
      where: { jobId, cancelledAt: null, startsAt: { gt: work.now } },
      data: { cancelledAt: work.now },
    });
    work.audit({
      entity: "job",
      entityId: jobId,
      after: { stoppedBecause: reason, bookingsFreed: freed.count },
    });
    return ok({ jobId, bookingsFreed: freed.count });
  },
});
