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

export type JobStatus = (typeof jobStatuses)[number];
