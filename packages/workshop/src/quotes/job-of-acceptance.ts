import type { Work } from "../core/use-case";
import { layOutSteps } from "../floor/lay-out-steps";
import { openJob } from "../jobs/open-job";
import { layOutObligations } from "../paperwork/lay-out-obligations";
import { readSelection } from "./stored-selection";

type Accepted = {
  readonly id: string;
  readonly quoteId: string;
  readonly selection: unknown;
  readonly quote: { readonly buildId: string; readonly customerId: string; readonly vehicleId: string };
};

/**
 * The job of an accepted version. The first acceptance opens it; when a later version of the same quote is accepted
 * before the work starts, the job that is waiting follows the new version.
 */
export async function jobOfAcceptance(
  work: Work,
  version: Accepted,
): Promise<{ readonly id: string; readonly number: number }> {
  const { tx } = work;
  const { packageCode, items } = readSelection(version.selection);
  const itemCodes = items.map(({ code }) => code);
  const { id, quoteId } = version;
  const waiting = await tx.job.findFirst({ where: { quoteId }, orderBy: { createdAt: "asc" } });
  if (!waiting) {
    const { buildId, customerId, vehicleId } = version.quote;
    return openJob(work, { id, quoteId, buildId, customerId, vehicleId, packageCode, itemCodes });
  }
  await tx.job.update({
    where: { id: waiting.id },
    data: { versionId: id, packageCode, revision: { increment: 1 } },
  });
  // Nothing is done yet, so the card and the list of obligations are laid out anew.
  const begun = await tx.evidence.count({ where: { obligation: { jobId: waiting.id } } });
  if (begun === 0) {
    await tx.jobStep.deleteMany({ where: { jobId: waiting.id } });
    await tx.obligation.deleteMany({ where: { jobId: waiting.id } });
    await layOutSteps(work, { id: waiting.id, buildId: waiting.buildId, itemCodes });
    await layOutObligations(work, { id: waiting.id, itemCodes });
  }
  work.audit({
    entity: "job",
    entityId: waiting.id,
    before: { versionId: waiting.versionId },
    after: { versionId: id },
  });
  return { id: waiting.id, number: waiting.number };
}
