import type { Transaction } from "@buildproof/database";

/**
 * One at a time per vehicle: an import, a run left out, a verdict. Whoever comes second waits and then reads
 * what the first has done, so no verdict rests on a run that was left out while it was being released.
 */
export async function lockDyno(tx: Transaction, vehicleId: string): Promise<void> {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`dyno ${vehicleId}`}, 0))`;
}
