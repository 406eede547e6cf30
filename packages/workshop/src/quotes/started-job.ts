import type { Transaction } from "@buildproof/database";
import { refuse } from "./refuse-quote";

/** A job that has started keeps the version it was accepted with. */
export async function startedJobRefusal(tx: Transaction, quoteId: string) {
  const job = await tx.job.findFirst({ where: { quoteId, startedAt: { not: null } } });
  return job ? refuse("job-started", { number: job.number }) : null;
}
