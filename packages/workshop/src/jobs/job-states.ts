import type { JobStatus } from "./job-status";

/**
 * Where a job may go from where it is. Handed over is the end: what comes back after is a job of its own.
 * A job that is done may turn out to need work again, so the way back to work stays open until the keys.
 */
export const jobCan: Readonly<Record<JobStatus, readonly JobStatus[]>> = {
  waiting: ["booked", "stopped"],
  booked: ["waiting", "checkedIn", "stopped"],
  checkedIn: ["inWork", "inProof", "stopped"],
  inWork: ["inProof", "doneNotForRoad", "doneUnpaid", "ready", "stopped"],
  inProof: ["inWork", "doneNotForRoad", "doneUnpaid", "ready", "stopped"],
  doneNotForRoad: ["inWork", "inProof", "doneUnpaid", "ready", "stopped"],
  doneUnpaid: ["inWork", "inProof", "doneNotForRoad", "ready", "stopped"],
  ready: ["inWork", "inProof", "doneNotForRoad", "doneUnpaid", "handedOver", "stopped"],
  handedOver: [],
  stopped: ["waiting", "checkedIn", "inWork"],
};

/** Status in words, as screens and documents have it. */
export const jobStatusWords: Readonly<Record<JobStatus, string>> = {
  waiting: "waiting for its booking",
  booked: "booked",
  checkedIn: "checked in",
  inWork: "in work",
  inProof: "in proof",
  doneNotForRoad: "done, not for road use",
  doneUnpaid: "done, unpaid",
  ready: "ready to hand over",
  handedOver: "handed over",
  stopped: "stopped",
};

export function mayMove(from: JobStatus, to: JobStatus): boolean {
  return jobCan[from].includes(to);
}
