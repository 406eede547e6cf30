import type { Result } from "../core/result";
import type { Work } from "../core/use-case";
import { selectionOf } from "../jobs/accepted-selection";
import { doneStatuses, type JobStatus } from "../jobs/job-status";
import { moveJob } from "../jobs/move-job";
import { quoteMoney } from "../quotes/quote-money";
import { type HandOverPoint, handOverPoints, notLaidOutPoints, workPoints } from "./hand-over-points";
import { type JobRecords, readJobRecords } from "./job-records";
import { obligationsOf } from "./lay-out-obligations";
import { type ObligationState, obligationStates } from "./obligation-states";
import { refuse } from "./paperwork-refusals";

type Doing = Pick<Work, "tx" | "now" | "audit">;

export type Standing = {
  readonly records: JobRecords;
  readonly obligations: readonly ObligationState[];
  /** How many follow from what was accepted and are not on the list. */
  readonly notLaidOut: number;
  readonly points: readonly HandOverPoint[];
};

/** How a job stands before hand-over: its record, its obligations, and every open point. */
export async function readStanding(tx: Work["tx"], jobId: string): Promise<Standing | null> {
  const job = await tx.job.findUnique({ where: { id: jobId }, include: { version: true } });
  if (!job) return null;
  const records = await readJobRecords(tx, jobId);
  const obligations = await obligationStates(tx, jobId, records);
  const money = await quoteMoney(tx, job.quoteId, job.version);
  const itemCodes = selectionOf(job.version.selection).map(({ code }) => code);
  const listed = new Set(obligations.map(({ code }) => code));
  const asked = await obligationsOf(tx, { id: jobId, itemCodes });
  const notLaidOut = asked.filter(({ code }) => !listed.has(code));
  const points = [...handOverPoints(records, obligations, money), ...notLaidOutPoints(notLaidOut)];
  return { records, obligations, notLaidOut: notLaidOut.length, points };
}

/** Done is three things: not for road use while an obligation is open, unpaid while money is, else ready. */
function doneStatus(points: readonly HandOverPoint[]): JobStatus {
  if (points.some(({ kind }) => kind === "obligation")) return "doneNotForRoad";
  return points.some(({ kind }) => kind === "money") ? "doneUnpaid" : "ready";
}

/**
 * Declares the work of a job done, and says what kind of done it is. Refused while a step, a hold point or
 * a fault is open.
 */
export async function settleDone(work: Doing, jobId: string): Promise<Result<{ readonly to: JobStatus }>> {
  const standing = await readStanding(work.tx, jobId);
  if (!standing) return refuse("job-not-found");
  const open = workPoints(standing.records, standing.obligations);
  if (open.length > 0) return refuse("work-not-done", { points: open.map(({ sentence }) => sentence) });
  return moveJob(work, jobId, doneStatus(standing.points));
}

/** After a payment or a certificate: a job that is done may have become another kind of done. */
export async function settleIfDone(work: Doing, jobId: string): Promise<void> {
  const job = await work.tx.job.findUnique({ where: { id: jobId }, select: { status: true } });
  if (!job || !doneStatuses.includes(job.status)) return;
  await settleDone(work, jobId);
}

/** For payments: settles every job of a quote. */
export async function settleJobsOfQuote(work: Doing, quoteId: string): Promise<void> {
  const jobs = await work.tx.job.findMany({ where: { quoteId }, select: { id: true } });
  for (const { id } of jobs) await settleIfDone(work, id);
}
