import type { Transaction } from "@buildproof/database";

/** Holds the quote until the transaction ends: issuing, accepting and paying happen one after another. */
export async function lockQuote(tx: Transaction, quoteId: string): Promise<void> {
  await tx.$queryRaw`select id from quote where id = ${quoteId}::uuid for update`;
}
