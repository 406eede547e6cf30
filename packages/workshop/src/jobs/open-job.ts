import { newId } from "../core/new-id";
import { nextNumber } from "../core/next-number";
import type { Work } from "../core/use-case";
import { layOutSteps } from "../floor/lay-out-steps";
import { layOutObligations } from "../paperwork/lay-out-obligations";

/** What a job needs to know of the version that was accepted. */
export type AcceptedVersion = {
  readonly id: string;
  readonly quoteId: string;
  readonly buildId: string;
  readonly customerId: string;
  readonly vehicleId: string;
  readonly packageCode: string | null;
  readonly itemCodes: readonly string[];
};

/** Opens the job of an accepted version: it waits for its booking, with its steps and its obligations laid out. */
export async function openJob(
  work: Pick<Work, "tx" | "workshopId" | "now" | "audit">,
  version: AcceptedVersion,
): Promise<{ readonly id: string; readonly number: number }> {
  const { tx, workshopId } = work;
  const id = newId();
  const number = await nextNumber(tx, workshopId, "job");
  const { itemCodes, id: versionId, ...rest } = version;
  await tx.job.create({ data: { id, workshopId, number, versionId, ...rest } });
  await layOutSteps(work, { id, buildId: version.buildId, itemCodes });
  await layOutObligations(work, { id, itemCodes });
  work.audit({ entity: "job", entityId: id, after: { number, versionId } });
  return { id, number };
}
