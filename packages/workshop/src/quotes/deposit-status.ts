import type { Transaction } from "@buildproof/database";

export type DepositStatus = {
  /** What the version in force asks for; 0 when none is accepted. */
  readonly dueMinor: bigint;
  readonly receivedMinor: bigint;
  /** A version is accepted and its deposit is here in full. */
  readonly met: boolean;
};

/** Whether the deposit of a quote is here. Every payment counts towards it, less what was refunded. */
export async function depositStatus(tx: Transaction, quoteId: string): Promise<DepositStatus> {
  const accepted = await tx.quoteVersion.findFirst({ where: { quoteId, status: "accepted" } });
  const receivedMinor = await receivedOn(tx, quoteId);
  const dueMinor = accepted?.depositMinor ?? 0n;
  return { dueMinor, receivedMinor, met: accepted !== null && receivedMinor >= dueMinor };
}

/** All that was paid on a quote, less what was paid back. */
export async function receivedOn(tx: Transaction, quoteId: string): Promise<bigint> {
  const payments = await tx.payment.findMany({ where: { quoteId } });
  return payments.reduce(
    (sum, { kind, amountMinor }) => (kind === "refund" ? sum - amountMinor : sum + amountMinor),
    0n,
  );
}
