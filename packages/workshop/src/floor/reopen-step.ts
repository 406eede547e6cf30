import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { signaturesAfter } from "./card-step";
import { doneAt, enterStep } from "./enter-step";
import { refuse } from "./floor-refusals";
import { readCardSteps } from "./read-card-steps";
import { deviceTime } from "./record-step";
import { workingJob } from "./working-job";

/**
 * Opens a step again: undo, on a card that forgets nothing. A signature given after the step answered for it,
 * so that signature falls too and is asked for again; then a reason is needed.
 */
export const reopenStep = command({
  name: "floor.reopen-step",
  permission: "floor:write",
  input: z.strictObject({
    stepId: z.uuid("Open the card again."),
    at: deviceTime.optional(),
    because: z.string().trim().max(500, "A reason has at most 500 characters. Shorten it.").default(""),
  }),
  async run(work, { stepId, at, because }) {
    const found = await work.tx.jobStep.findUnique({ where: { id: stepId }, select: { jobId: true } });
    if (!found) return refuse("step-not-found");
    const job = await workingJob(work, found.jobId);
    if (!job.ok) return job;
    const steps = await readCardSteps(work.tx, found.jobId);
    const step = steps.find(({ id }) => id === stepId);
    if (!step) return refuse("step-not-found");
    if (step.state === "open") return refuse("nothing-to-undo");
    const fallen = signaturesAfter(steps, step.position);
    if ((fallen.length > 0 || step.kind === "holdPoint") && because.length < 3)
      return refuse("reopen-reason");
    const when = doneAt(at, work.now);
    await enterStep(work, found.jobId, step, { kind: "reopened", text: because, at: when });
    for (const hold of fallen) {
      await enterStep(work, found.jobId, hold, {
        kind: "reopened",
        text: `“${step.text}” before it was opened again. ${because}`.trim(),
        at: when,
      });
    }
    return ok({ stepId, jobId: found.jobId, signaturesFallen: fallen.map(({ text }) => text) });
  },
});
