import { z } from "zod";
import { atField } from "../core/at-field";
import type { Context } from "../core/context";
import { perform } from "../core/perform";
import { ok, type Result } from "../core/result";
import { command, query } from "../core/use-case";
import { signIn } from "../identity/sign-in";
import type { CardStep } from "./card-step";
import { holdBefore, stepsHeldBy } from "./card-step";
import { doneAt, enterStep } from "./enter-step";
import { refuse } from "./floor-refusals";
import { readCardSteps } from "./read-card-steps";
import { deviceTime } from "./record-step";
import { startWork, workingJob } from "./working-job";

export const SIGNING_SKILL = "second-signatory";

const signatureInput = z.strictObject({
  stepId: z.uuid("Open the card again."),
  at: deviceTime.optional(),
  note: z.string().trim().max(500, "A note has at most 500 characters. Shorten it.").default(""),
  /** For a hold point of the licensed signatory: the name on the licence. */
  signatoryName: z.string().trim().max(120, "A name has at most 120 characters. Shorten it.").default(""),
});

type Signature = z.input<typeof signatureInput>;

/** Appends the signature in the name of the second person, who is the one acting here. */
export const enterSignature = command({
  name: "floor.sign-hold-point",
  permission: "floor:write",
  input: signatureInput,
  async run(work, { stepId, at, note, signatoryName }) {
    const found = await work.tx.jobStep.findUnique({ where: { id: stepId }, select: { jobId: true } });
    if (!found) return refuse("step-not-found");
    const job = await workingJob(work, found.jobId);
    if (!job.ok) return job;
    const steps = await readCardSteps(work.tx, found.jobId);
    const hold = steps.find(({ id }) => id === stepId);
    if (!hold) return refuse("step-not-found");
    if (hold.kind !== "holdPoint") return refuse("not-a-hold-point");
    const { person } = work;
    if (!person.skills.includes(SIGNING_SKILL)) return refuse("signer-without-skill", { name: person.name });
    if (hold.state === "done")
      return refuse("already-entered", { by: hold.entered?.by.name ?? "", what: "signed" });
    const own = stepsHeldBy(steps, hold).find(({ workedBy }) => workedBy.includes(person.id));
    if (own) return refuse("signer-did-the-work", { name: person.name, step: own.text });
    const points = unsettled(steps, hold, await openFaults(work.tx, found.jobId));
    if (points.length > 0) return refuse("hold-not-ready", { points });
    if (hold.signer === "signatory" && signatoryName === "") return refuse("signatory-missing");
    const text = [signatoryName && `Seen by ${signatoryName}, licensed signatory.`, note]
      .filter(Boolean)
      .join(" ");
    await enterStep(work, found.jobId, hold, { kind: "signed", text, at: doneAt(at, work.now) });
    const started = await startWork(work, job.value);
    if (!started.ok) return started;
    return ok({ stepId, jobId: found.jobId, signedBy: person.name });
  },
});

/** Whether the acting person may have somebody sign here at all. */
export const mayAskForSignature = query({
  name: "floor.ask-for-signature",
  permission: "floor:write",
  input: z.strictObject({ stepId: z.uuid("Open the card again.") }),
  async run({ tx }, { stepId }) {
    const step = await tx.jobStep.findUnique({ where: { id: stepId }, select: { id: true } });
    return step ? ok(null) : refuse("step-not-found");
  },
});

/**
 * A second person signs a hold point on the device of the first: with their own e-mail and password, under the
 * same limits as signing in. The device stays signed in as the first; the entry and the audit name the second.
 */
export async function signHoldPoint(
  context: Context,
  input: Signature & { readonly email: string; readonly password: string },
  options: { readonly key?: string } = {},
): Promise<Result<{ stepId: string; jobId: string; signedBy: string }>> {
  const { email, password, ...signature } = input;
  const asked = await perform(context, mayAskForSignature, { stepId: signature.stepId });
  if (!asked.ok) return asked;
  const { actor } = context;
  const second = await signIn(context, { email, password });
  // Somebody of another workshop is told what a stranger is told.
  if (!second.ok || actor.kind !== "person" || second.value.workshopId !== actor.workshopId)
    return atField("email", refuse("sign-in-failed"));
  return perform(
    { ...context, actor: { kind: "person", ...second.value } },
    enterSignature,
    signature,
    options,
  );
}

type OpenFault = { readonly stepId: string | null; readonly sentence: string };

function unsettled(
  steps: readonly CardStep[],
  hold: CardStep,
  faults: readonly OpenFault[],
): readonly string[] {
  const earlier = holdBefore(steps, hold.position);
  const before = steps.filter(({ position }) => position < hold.position);
  const open = before.filter(({ state }) => state === "open");
  const ids = new Set(before.map(({ id }) => id));
  const found = faults.filter(({ stepId }) => stepId !== null && ids.has(stepId));
  return [
    ...(earlier ? [`Not signed: ${earlier.text}`] : []),
    ...open
      .filter(({ kind }) => kind !== "holdPoint")
      .map(({ operationName, text }) => `Not done: ${operationName}, ${text}`),
    ...found.map(({ sentence }) => `Fault not settled: ${sentence}`),
  ];
}

function openFaults(tx: Parameters<typeof readCardSteps>[0], jobId: string): Promise<OpenFault[]> {
  return tx.fault.findMany({ where: { jobId, clearedAt: null }, select: { stepId: true, sentence: true } });
}
