import type { Transaction } from "@buildproof/database";
import { type MinorUnits, minorUnits } from "@buildproof/units";
import { type CostKind, costKinds } from "./cost-kind";

export type RecordedCost = {
  readonly id: string;
  readonly jobId: string;
  readonly jobNumber: number;
  readonly kind: CostKind;
  readonly description: string;
  readonly amountMinor: MinorUnits;
  readonly at: Date;
};

/** Costs recorded on jobs beside the clock, of one kind or of all, the largest first. */
export async function recordedCosts(
  tx: Transaction,
  jobIds: readonly string[],
  kind?: CostKind,
): Promise<readonly RecordedCost[]> {
  const rows = await tx.jobCost.findMany({
    where: { jobId: { in: [...jobIds] } },
    include: { job: { select: { number: true } } },
    orderBy: [{ amountMinor: "desc" }, { id: "asc" }],
  });
  return rows
    .map(({ id, jobId, job, description, amountMinor, at, ...row }) => ({
      id,
      jobId,
      jobNumber: job.number,
      kind: kindOf(row.kind),
      description,
      amountMinor: minorUnits(amountMinor),
      at,
    }))
    .filter((cost) => kind === undefined || cost.kind === kind);
}

/** As the figures have it: what is of no known kind is other. */
function kindOf(stored: string): CostKind {
  return costKinds.find((kind) => kind === stored && kind !== "labour") ?? "other";
}
