import { handOverPackPdf } from "@buildproof/documents";
import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { packDocument, readPackJob } from "./pack-document";
import { refuse } from "./paperwork-refusals";

/** The hand-over pack of a job that was handed over, as a PDF: the same bytes each time it is asked for. */
export const handOverPack = query({
  name: "paperwork.hand-over-pack",
  permission: "jobs:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx }, { jobId }) {
    const job = await readPackJob(tx, jobId);
    if (!job) return refuse("job-not-found");
    if (!job.handOver) return refuse("not-handed-over");
    const bytes = await handOverPackPdf(await packDocument(tx, job, job.handOver));
    return ok({ bytes, fileName: `hand-over-pack-job-${job.number}.pdf` });
  },
});
