import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { settleDone } from "./settle-job";

/** The floor says that the work is done. */
export const finishWork = command({
  name: "paperwork.finish-work",
  permission: "floor:write",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run(work, { jobId }) {
    const settled = await settleDone(work, jobId);
    return settled.ok ? ok({ jobId, status: settled.value.to }) : settled;
  },
});
