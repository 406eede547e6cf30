import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuse } from "./job-refusals";
import { jobStatusWords } from "./job-states";
import { endedStatuses } from "./job-status";

/** Records that the parts of a job were opened and counted against its kit list. Each count is appended. */
export const countGoodsIn = command({
  name: "jobs.count-goods-in",
  permission: "goods:count",
  input: z.strictObject({
    jobId: z.uuid("Open the job again and count from there."),
    complete: z.boolean("Say whether everything on the kit list is here."),
    missing: z.string().trim().max(1_000, "Keep what is missing under 1,000 characters."),
  }),
  async run({ tx, workshopId, person, now, audit }, { jobId, complete, missing }) {
    const job = await tx.job.findUnique({ where: { id: jobId } });
    if (!job) return refuse("job-not-found");
    if (endedStatuses.includes(job.status)) {
      return refuse("goods-closed", { status: jobStatusWords[job.status] });
    }
    if (!complete && missing === "") return refuse("goods-missing-not-said");
    const id = newId();
    await tx.goodsIn.create({
      data: {
        id,
        workshopId,
        jobId,
        complete,
        missing: complete ? "" : missing,
        countedById: person.id,
        countedAt: now,
      },
    });
    audit({ entity: "job", entityId: jobId, after: { goodsIn: complete ? "complete" : missing } });
    return ok({ id, complete });
  },
});
