import type { Transaction } from "@buildproof/database";

/** Jobs that ended before the work was done, since then: they stand outside the margins. */
export function stoppedJobs(
  tx: Transaction,
  { since, packageCode }: { readonly since: Date; readonly packageCode?: string | null },
): Promise<readonly { readonly id: string; readonly number: number }[]> {
  return tx.job.findMany({
    where: {
      status: "stopped",
      OR: [{ finishedAt: { gte: since } }, { finishedAt: null, createdAt: { gte: since } }],
      ...(packageCode === undefined ? {} : { packageCode }),
    },
    select: { id: true, number: true },
    orderBy: { number: "asc" },
  });
}
