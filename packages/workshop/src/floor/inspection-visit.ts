import type { Transaction } from "@buildproof/database";

/** What a build has on record of the visit that comes before anything is ordered. */
export type InspectionVisit = { readonly inspected: boolean; readonly measured: boolean };

export async function inspectionVisit(tx: Transaction, buildId: string): Promise<InspectionVisit> {
  const inspections = await tx.inspection.count({ where: { buildId } });
  const baselines = await tx.dynoSession.count({ where: { buildId, kind: "baseline" } });
  return { inspected: inspections > 0, measured: baselines > 0 };
}

type StagedOperation = { readonly stage: string; readonly place: string };

/**
 * The operations that are still to be done. Where the visit itself is all of the job they stay: it is recorded
 * step by step on the card of its own job.
 */
export function withoutRecorded<Operation extends StagedOperation>(
  operations: readonly Operation[],
  { inspected, measured }: InspectionVisit,
): readonly Operation[] {
  const open = operations.filter(({ stage, place }) => {
    if (stage !== "inspection") return true;
    return place === "dyno" ? !measured : !inspected;
  });
  return open.some(({ stage }) => stage !== "inspection") ? open : operations;
}
