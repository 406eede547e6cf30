import { newId } from "../core/new-id";
import type { PersonWork } from "../core/use-case";
import type { CardStep } from "./card-step";

/**
 * The running clock follows the card, so that nobody has to say which operation they are on: the time since
 * the person's last entry belongs to the operation of the step that has just been done.
 */
export async function followOperation(
  work: Pick<PersonWork, "tx" | "workshopId" | "person">,
  jobId: string,
  step: Pick<CardStep, "operationCode">,
  at: Date,
): Promise<void> {
  const { tx, workshopId, person } = work;
  const running = await tx.clockEntry.findFirst({ where: { personId: person.id, stoppedAt: null } });
  if (!running || running.jobId !== jobId || running.operationCode === step.operationCode) return;
  if (at <= running.startedAt) return;
  const last = await tx.stepEntry.findFirst({
    where: { jobId, personId: person.id, at: { gt: running.startedAt, lte: at } },
    orderBy: { at: "desc" },
    select: { at: true },
  });
  if (!last) {
    // Nothing was entered since the start: all of it was this operation.
    await tx.clockEntry.update({ where: { id: running.id }, data: { operationCode: step.operationCode } });
    return;
  }
  await tx.clockEntry.update({ where: { id: running.id }, data: { stoppedAt: last.at } });
  await tx.clockEntry.create({
    data: {
      id: newId(),
      workshopId,
      jobId,
      personId: person.id,
      operationCode: step.operationCode,
      startedAt: last.at,
    },
  });
}
