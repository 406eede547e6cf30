import { newId } from "../core/new-id";
import type { PersonWork } from "../core/use-case";
import type { CardStep } from "./card-step";

/** What is appended for a step. */
export type NewEntry = {
  readonly kind: "done" | "value" | "photo" | "signed" | "reopened";
  readonly value?: number;
  readonly text?: string;
  readonly photoSha256?: string;
  readonly withinLimits?: boolean;
  /** When it was done, by the device. */
  readonly at: Date;
};

/** Appends one entry in the acting person's name. The record is never changed, only added to. */
export async function enterStep(
  work: PersonWork,
  jobId: string,
  step: CardStep,
  entry: NewEntry,
): Promise<void> {
  const { tx, workshopId, person, now } = work;
  await tx.stepEntry.create({
    data: { id: newId(), workshopId, stepId: step.id, jobId, ...entry, personId: person.id, recordedAt: now },
  });
  const { kind, value, text, withinLimits } = entry;
  work.audit({
    entity: "step",
    entityId: step.id,
    after: {
      job: jobId,
      kind,
      ...(value === undefined ? {} : { value }),
      ...(text ? { text } : {}),
      withinLimits,
    },
  });
}

/** A device's clock may run ahead: nothing is done in the future. */
export function doneAt(byDevice: string | undefined, now: Date): Date {
  const at = byDevice === undefined ? now : new Date(byDevice);
  return at > now ? now : at;
}
