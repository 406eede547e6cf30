import type { Transaction } from "@buildproof/database";

/** What was paid on a quote against what one of its versions asks, in minor units of that version's currency. */
export type QuoteMoney = {
  /** All that came in, less what went back: what the workshop holds of the customer's money. */
  readonly receivedMinor: bigint;
  /** What is asked: the accepted price, or what credit notes have left of its invoice. */
  readonly grossMinor: bigint;
  readonly depositMinor: bigint;
  readonly currency: string;
  readonly depositMet: boolean;
  /** Never less than nothing. */
  readonly outstandingMinor: bigint;
  /** Held beyond what is asked: it goes back to the customer. Never less than nothing. */
  readonly owedBackMinor: bigint;
};

type Asking = {
  readonly id: string;
  readonly grossMinor: bigint;
  readonly depositMinor: bigint;
  readonly currency: string;
};
type Entry = { readonly kind: "deposit" | "balance" | "refund"; readonly amountMinor: bigint };

export async function quoteMoney(tx: Transaction, quoteId: string, version: Asking): Promise<QuoteMoney> {
  const asked = { ...version, grossMinor: await askedFor(tx, version) };
  return moneyOf(await tx.payment.findMany({ where: { quoteId } }), asked);
}

/** The accepted price; once it is invoiced, what credit notes have left of the newest invoice. */
async function askedFor(tx: Transaction, { id, grossMinor }: Asking): Promise<bigint> {
  const invoice = await tx.invoice.findFirst({
    where: { versionId: id, kind: "invoice" },
    orderBy: { number: "desc" },
    include: { creditNotes: { select: { grossMinor: true } } },
  });
  if (!invoice) return grossMinor;
  return invoice.creditNotes.reduce((left, note) => left - note.grossMinor, invoice.grossMinor);
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
    // Nobody owes a deposit on more than there is to pay.
    depositMet: receivedMinor >= depositMinor || outstanding <= 0n,
    outstandingMinor: outstanding > 0n ? outstanding : 0n,
    owedBackMinor: outstanding < 0n ? -outstanding : 0n,
  };
}
