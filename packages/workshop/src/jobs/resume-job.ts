import { z } from "zod";
import { atField } from "../core/at-field";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuse } from "./job-refusals";
import { jobStatusWords } from "./job-states";
import type { JobStatus } from "./job-status";
import { moveJob } from "./move-job";

/**
 * Takes a stopped job up again where it left off: waiting for its time when the vehicle never came in, else in
 * the workshop. Why it was stopped stays on the job; the time that was freed is booked again through the gate.
 */
export const resumeJob = command({
  name: "jobs.resume",
  permission: "bookings:write",
  input: z.strictObject({
    jobId: z.uuid("Open the job again and take it up from there."),
    reason: z.string().trim().max(1_000, "Keep the reason under 1,000 characters."),
  }),
  async run(work, { jobId, reason }) {
    const { tx, now, audit } = work;
    const job = await tx.job.findUnique({
      where: { id: jobId },
      include: { checkIn: { select: { id: true } } },
    });
    if (!job) return refuse("job-not-found");
    if (job.status !== "stopped") return refuse("not-stopped", { status: jobStatusWords[job.status] });
    if (reason.length < 10) return atField("reason", refuse("resume-reason"));
    const moved = await moveJob(work, jobId, whereItLeftOff(job));
    if (!moved.ok) return moved;
    await tx.job.update({ where: { id: jobId }, data: { resumedAt: now, resumedBecause: reason } });
    audit({ entity: "job", entityId: jobId, after: { resumedBecause: reason } });
    return ok({ jobId, status: moved.value.to, statusWords: jobStatusWords[moved.value.to] });
  },
});

function whereItLeftOff(job: { readonly startedAt: Date | null; readonly checkIn: unknown }): JobStatus {
  if (job.startedAt) return "inWork";
  return job.checkIn ? "checkedIn" : "waiting";
}
