import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { selectionOf } from "../jobs/accepted-selection";
import { layOutObligations } from "./lay-out-obligations";
import { refuse } from "./paperwork-refusals";

/** Lays out what is not laid out yet, for a job whose obligations were never listed or whose rules have grown. */
export const layOutPaperwork = command({
  name: "paperwork.lay-out",
  permission: "evidence:write",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run(work, { jobId }) {
    const job = await work.tx.job.findUnique({ where: { id: jobId }, include: { version: true } });
    if (!job) return refuse("job-not-found");
    if (job.status === "handedOver") return refuse("already-handed-over");
    const itemCodes = selectionOf(job.version.selection).map(({ code }) => code);
    const laidOut = await layOutObligations(work, { id: jobId, itemCodes });
    work.audit({ entity: "job", entityId: jobId, after: { laidOut } });
    return ok({ jobId, laidOut });
  },
});
