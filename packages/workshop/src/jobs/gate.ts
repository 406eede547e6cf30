import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { readGateJob } from "./gate-job";
import { isOpen } from "./gate-point";
import { readGateCatalogue } from "./gate-prerequisites";
import { refuse } from "./job-refusals";
import { readGate } from "./read-gate";

/** The booking gate of a job: each point, met or not, and who can resolve it. */
export const jobGate = query({
  name: "jobs.gate",
  permission: "jobs:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx, now }, { jobId }) {
    const job = await readGateJob(tx, jobId);
    if (!job) return refuse("job-not-found");
    const points = await readGate(tx, await readGateCatalogue(tx), job, { now });
    return ok({ jobId, number: job.number, points, open: points.filter(isOpen).length });
  },
});
