import type { Transaction } from "@buildproof/database";

/** What was paid on a quote against what one of its versions asks, in minor units of that version's currency. */
export type QuoteMoney = {
  /** All that came in, less what went back: what the workshop holds of the customer's money. */
  readonly receivedMinor: bigint;
  readonly grossMinor: bigint;
  readonly depositMinor: bigint;
  readonly currency: string;
  readonly depositMet: boolean;
  /** Never less than nothing. */
  readonly outstandingMinor: bigint;
};

type Asking = { readonly grossMinor: bigint; readonly depositMinor: bigint; readonly currency: string };
type Entry = { readonly kind: "deposit" | "balance" | "refund"; readonly amountMinor: bigint };

export async function quoteMoney(tx: Transaction, quoteId: string, version: Asking): Promise<QuoteMoney> {
  return moneyOf(await tx.payment.findMany({ where: { quoteId } }), version);
}

/** The money of a quote against the version that the customer accepted; null while none is. */
export async function moneyInForce(tx: Transaction, quoteId: string): Promise<QuoteMoney | null> {
  const accepted = await tx.quoteVersion.findFirst({ where: { quoteId, status: "accepted" } });
  return accepted ? quoteMoney(tx, quoteId, accepted) : null;
}

/** All that was paid on a quote, less what was paid back. */
export async function receivedOn(tx: Transaction, quoteId: string): Promise<bigint> {
  return heldOf(await tx.payment.findMany({ where: { quoteId } }));
}

/** Every payment counts, less every refund. */
export function heldOf(entries: readonly Entry[]): bigint {
  return entries.reduce(
    (sum, { kind, amountMinor }) => (kind === "refund" ? sum - amountMinor : sum + amountMinor),
    0n,
  );
}

function moneyOf(entries: readonly Entry[], { grossMinor, depositMinor, currency }: Asking): QuoteMoney {
  const receivedMinor = heldOf(entries);
  const outstanding = grossMinor - receivedMinor;
  return {
    receivedMinor,
    grossMinor,
    depositMinor,
    currency,
    depositMet: receivedMinor >= depositMinor,
    outstandingMinor: outstanding > 0n ? outstanding : 0n,
  };
}
