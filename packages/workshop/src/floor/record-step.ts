import { z } from "zod";
import { ok, type Result } from "../core/result";
import { command, type PersonWork } from "../core/use-case";
import { type CardStep, holdBefore } from "./card-step";
import { doneAt, enterStep, type NewEntry } from "./enter-step";
import { enteredWords } from "./entered-words";
import { refuse } from "./floor-refusals";
import { followOperation } from "./follow-operation";
import { figureWords, isWithin, limitWords } from "./limits";
import { readCardSteps } from "./read-card-steps";
import { clearOutsideFault, raiseOutsideFault } from "./step-faults";
import { startWork, workingJob } from "./working-job";

export const deviceTime = z.iso.datetime({
  offset: true,
  error: "The device's clock gave no time. Set it and repeat.",
});

const recordStepInput = z.strictObject({
  stepId: z.uuid("Open the card again."),
  /** When it was done, by the device. */
  at: deviceTime.optional(),
  value: z
    .number({ error: "Enter the figure that you read, in digits, such as 24.5." })
    .min(-1_000_000, "That figure is too small to be a reading. Check it.")
    .max(1_000_000, "That figure is too large to be a reading. Check it.")
    .optional(),
  serial: z.string().trim().max(60, "A serial number has at most 60 characters. Check it.").optional(),
  note: z.string().trim().max(500, "A note has at most 500 characters. Shorten it.").optional(),
  photoSha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/, "The photo has not arrived at the workshop. Take it again.")
    .optional(),
});

type Recorded = z.output<typeof recordStepInput>;

/**
 * Enters one step of a job card: a tick, a figure, a serial number or a photo. A figure outside its limits is
 * refused as done; with a note it is kept and becomes a fault, until it is entered again within limits.
 */
export const recordStep = command({
  name: "floor.record-step",
  permission: "floor:write",
  input: recordStepInput,
  async run(work, input) {
    const found = await work.tx.jobStep.findUnique({ where: { id: input.stepId }, select: { jobId: true } });
    if (!found) return refuse("step-not-found");
    const job = await workingJob(work, found.jobId);
    if (!job.ok) return job;
    const steps = await readCardSteps(work.tx, found.jobId);
    const step = steps.find(({ id }) => id === input.stepId);
    if (!step) return refuse("step-not-found");
    const allowed = mayEnter(steps, step);
    if (!allowed.ok) return allowed;
    const entry = await entryOf(work, step, input);
    if (!entry.ok) return entry;
    await followOperation(work, found.jobId, step, entry.value.at);
    await enterStep(work, found.jobId, step, entry.value);
    if (entry.value.withinLimits === false) await raiseOutsideFault(work, found.jobId, step, entry.value);
    else await clearOutsideFault(work, step, entry.value);
    const started = await startWork(work, job.value);
    if (!started.ok) return started;
    return ok({ stepId: step.id, jobId: found.jobId, isOutside: entry.value.withinLimits === false });
  },
});

function mayEnter(steps: readonly CardStep[], step: CardStep): Result<null> {
  if (step.kind === "holdPoint") return refuse("hold-needs-second-person");
  const hold = holdBefore(steps, step.position);
  if (hold) return refuse("held", { hold: hold.text });
  // A photo may be joined by another; a figure outside its limits may be followed by a better one.
  if (step.state === "done" && step.kind !== "photo" && step.entered) {
    return refuse("already-entered", { by: step.entered.by.name, what: enteredWords(step, step.entered) });
  }
  return ok(null);
}

async function entryOf(work: PersonWork, step: CardStep, input: Recorded): Promise<Result<NewEntry>> {
  const photo = await keptPhoto(work, input.photoSha256);
  if (!photo.ok) return photo;
  const common = {
    at: doneAt(input.at, work.now),
    ...(input.note ? { text: input.note } : {}),
    ...(photo.value ? { photoSha256: photo.value } : {}),
  };
  switch (step.kind) {
    case "measurement":
    case "torque":
      return readingOf(step, input, common);
    case "serial":
      return input.serial ? ok({ ...common, kind: "value", text: input.serial }) : refuse("serial-missing");
    case "photo":
      return photo.value ? ok({ ...common, kind: "photo" }) : refuse("photo-missing");
    default:
      return ok({ ...common, kind: "done" });
  }
}

function readingOf(step: CardStep, input: Recorded, common: Omit<NewEntry, "kind">): Result<NewEntry> {
  const { value } = input;
  if (value === undefined) return refuse("value-missing");
  const withinLimits = isWithin(value, step);
  if (!withinLimits && !input.note)
    return refuse("outside-limits", { read: figureWords(value, step.unit), limits: limitWords(step) });
  return ok({ ...common, kind: "value", value, withinLimits });
}

async function keptPhoto(
  { tx, workshopId }: PersonWork,
  sha256: string | undefined,
): Promise<Result<string | null>> {
  if (sha256 === undefined) return ok(null);
  const row = await tx.storedFile.findUnique({ where: { workshopId_sha256: { workshopId, sha256 } } });
  return row?.mediaType.startsWith("image/") ? ok(sha256) : refuse("photo-not-kept");
}
