import type { Work } from "../core/use-case";
import { selectionOf } from "../jobs/accepted-selection";
import { layOutSteps } from "./lay-out-steps";

/**
 * Lays out the cards of a build's jobs anew once its inspection or its baseline is recorded, as long as the
 * vehicle is not here and nothing is entered: a step that somebody entered stays where it is.
 */
export async function layOutAgain(work: Pick<Work, "tx" | "workshopId">, buildId: string): Promise<void> {
  const { tx } = work;
  const jobs = await tx.job.findMany({
    where: { buildId, status: { in: ["waiting", "booked"] }, steps: { none: { entries: { some: {} } } } },
    select: { id: true, version: { select: { selection: true } } },
  });
  for (const { id, version } of jobs) {
    await tx.jobStep.deleteMany({ where: { jobId: id } });
    const itemCodes = selectionOf(version.selection).map(({ code }) => code);
    await layOutSteps(work, { id, buildId, itemCodes });
  }
}
