import type { Work } from "../core/use-case";

/**
 * Holds the job's row until the transaction ends, so that two devices on one card go one after the other:
 * a step cannot slip past a hold point that is being opened again. Null when there is no such job here.
 */
export async function lockJob({ tx }: Pick<Work, "tx">, jobId: string) {
  const rows = await tx.$queryRaw<{ id: string }[]>`select id from job where id = ${jobId}::uuid for update`;
  if (rows.length === 0) return null;
  return tx.job.findUnique({ where: { id: jobId } });
}
