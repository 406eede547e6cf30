import type { Result } from "../core/result";
import { ok } from "../core/result";
import type { Work } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import type { JobStatus } from "../jobs/job-status";
import { moveJob } from "../jobs/move-job";
import { refuse } from "./floor-refusals";
import { lockJob } from "./lock-job";

/** Where the vehicle is in the workshop's hands: then its card may be written on. */
const inTheBuilding: readonly JobStatus[] = [
  "checkedIn",
  "inWork",
  "inProof",
  "doneNotForRoad",
  "doneUnpaid",
  "ready",
];

export function isInTheBuilding(status: JobStatus): boolean {
  return inTheBuilding.includes(status);
}

type Held = NonNullable<Awaited<ReturnType<typeof lockJob>>>;

/** The job of a card that is being written on, its row held; refused unless the vehicle is here. */
export async function workingJob(work: Pick<Work, "tx">, jobId: string): Promise<Result<Held>> {
  const job = await lockJob(work, jobId);
  if (!job) return refuse("job-not-found");
  return isInTheBuilding(job.status)
    ? ok(job)
    : refuse("not-in-the-building", { status: jobStatusWords[job.status] });
}

/** The first entry on a checked-in job's card starts its work. */
export async function startWork(
  work: Pick<Work, "tx" | "now" | "audit">,
  job: Held,
): Promise<Result<unknown>> {
  return job.status === "checkedIn" ? moveJob(work, job.id, "inWork") : ok(null);
}
