/** A job's status, as the database holds it. */
export const jobStatuses = [
  "waiting",
  "booked",
  "checkedIn",
  "inWork",
  "inProof",
  "doneNotForRoad",
  "doneUnpaid",
  "ready",
  "handedOver",
  "stopped",
] as const;

/** The work is done, and the vehicle has not left. */
export const doneStatuses: readonly JobStatus[] = ["doneNotForRoad", "doneUnpaid", "ready"];

/** The vehicle is here to be worked on. */
export const workStatuses: readonly JobStatus[] = ["checkedIn", "inWork", "inProof"];

/** Nothing more happens to the job. */
export const endedStatuses: readonly JobStatus[] = ["handedOver", "stopped"];

export type JobStatus = (typeof jobStatuses)[number];
