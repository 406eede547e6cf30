import { newId } from "../core/new-id";
import type { PersonWork } from "../core/use-case";
import type { CardStep } from "./card-step";
import type { NewEntry } from "./enter-step";
import { figureWords, limitWords } from "./limits";

/** A figure outside its limits is for the desk to see at once. */
export async function raiseOutsideFault(
  work: PersonWork,
  jobId: string,
  step: CardStep,
  entry: NewEntry,
): Promise<void> {
  const { tx, workshopId, person, now } = work;
  const id = newId();
  const read = figureWords(entry.value ?? 0, step.unit);
  const sentence = `${opening(step)}${read}, outside ${limitWords(step)}. ${entry.text ?? ""}`.trim();
  await tx.fault.create({
    data: {
      id,
      workshopId,
      jobId,
      stepId: step.id,
      sentence,
      photoSha256: entry.photoSha256 ?? null,
      raisedById: person.id,
      raisedAt: now,
    },
  });
  work.audit({ entity: "fault", entityId: id, after: { job: jobId, sentence } });
}

/** Entered again within its limits: what the earlier figure raised is settled by it. */
export async function clearOutsideFault(work: PersonWork, step: CardStep, entry: NewEntry): Promise<void> {
  if (step.state !== "outside") return;
  const because = `Entered again within limits: ${figureWords(entry.value ?? 0, step.unit)}.`;
  // Another fault raised at this step, of something else, stays for the desk.
  const open = await work.tx.fault.findMany({
    where: { stepId: step.id, clearedAt: null, sentence: { startsWith: opening(step) } },
    select: { id: true },
  });
  await work.tx.fault.updateMany({
    where: { id: { in: open.map(({ id }) => id) } },
    data: { clearedAt: work.now, clearedBecause: because },
  });
  for (const { id } of open) work.audit({ entity: "fault", entityId: id, after: { cleared: because } });
}

/** How the sentence of an outside figure begins; so it is found again when the step is entered anew. */
function opening(step: CardStep): string {
  return `${step.operationName}: ${step.text} Reads `;
}
