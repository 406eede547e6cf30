import { type BuildTrait, traitsOfItem } from "@buildproof/compliance";
import type { Transaction } from "@buildproof/database";

/** What the accepted items, their operations and the job card say of a build, as far as obligations turn on it. */
export async function buildTraitsOf(
  tx: Transaction,
  job: { readonly id: string; readonly itemCodes: readonly string[] },
): Promise<ReadonlySet<BuildTrait>> {
  const items = await tx.item.findMany({ where: { code: { in: [...job.itemCodes] } } });
  const proofs = await tx.operation.count({
    where: { stage: "proof", code: { in: items.flatMap((item) => item.operations) } },
  });
  const kinds = await tx.jobStep.groupBy({ by: ["kind"], where: { jobId: job.id } });
  const traits = new Set(items.flatMap(traitsOfItem));
  if (proofs > 0) traits.add("power-promised");
  if (kinds.some(({ kind }) => kind === "torque")) traits.add("torque-steps");
  if (kinds.some(({ kind }) => kind === "holdPoint")) traits.add("hold-points");
  return traits;
}
