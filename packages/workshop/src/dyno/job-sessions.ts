import type { SessionRecord } from "./session-record";

export type JobSessions = {
  /** What the vehicle made before this job. */
  readonly baseline: SessionRecord | null;
  /** On the way, oldest first; a proof that was measured again counts as one of them. */
  readonly steps: readonly SessionRecord[];
  /** The newest proof: the one the verdict is about. */
  readonly proof: SessionRecord | null;
};

/** Sorts a vehicle's sessions for one job. A baseline of its own build comes before one of an earlier visit. */
export function jobSessions(
  job: { readonly id: string; readonly buildId: string },
  sessions: readonly SessionRecord[],
): JobSessions {
  const baselines = sessions.filter(({ kind }) => kind === "baseline");
  const own = baselines.findLast(({ jobId, buildId }) => jobId === job.id || buildId === job.buildId);
  const ofJob = sessions.filter(({ kind, jobId }) => kind !== "baseline" && jobId === job.id);
  const proof = ofJob.findLast(({ kind }) => kind === "proof") ?? null;
  const first = ofJob[0]?.doneAt ?? null;
  const earlier = baselines.findLast(({ doneAt }) => first === null || doneAt <= first);
  return {
    baseline: own ?? earlier ?? null,
    steps: ofJob.filter(({ id }) => id !== proof?.id),
    proof,
  };
}
