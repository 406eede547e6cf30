import { ok, type Result } from "../core/result";
import type { Work } from "../core/use-case";
import { refuse } from "./job-refusals";
import { jobStatusWords, mayMove } from "./job-states";
import { doneStatuses, type JobStatus } from "./job-status";

type Moved = { readonly from: JobStatus; readonly to: JobStatus };

/**
 * Moves a job to another status, if the table of states allows it. Asking for where it already is changes
 * nothing. Two people at once: the second is told, because the row is changed only from the status read.
 */
export async function moveJob(
  work: Pick<Work, "tx" | "now" | "audit">,
  jobId: string,
  to: JobStatus,
): Promise<Result<Moved>> {
  const { tx, now } = work;
  const job = await tx.job.findUnique({ where: { id: jobId } });
  if (!job) return refuse("job-not-found");
  const from = job.status;
  if (from === to) return ok({ from, to });
  if (!mayMove(from, to)) {
    return refuse("job-cannot-move", { from: jobStatusWords[from], to: jobStatusWords[to] });
  }
  const { count } = await tx.job.updateMany({
    where: { id: jobId, status: from, revision: job.revision },
    data: {
      status: to,
      revision: { increment: 1 },
      ...(to === "inWork" && !job.startedAt ? { startedAt: now } : {}),
      ...(doneStatuses.includes(to) && !job.finishedAt ? { finishedAt: now } : {}),
      ...(to === "inWork" ? { finishedAt: null } : {}),
    },
  });
  if (count === 0) return refuse("job-stale");
  work.audit({ entity: "job", entityId: jobId, before: { status: from }, after: { status: to } });
  return ok({ from, to });
}
