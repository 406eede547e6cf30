import type { Transaction } from "@buildproof/database";

/** A quote that the customer declined, and why they said so. */
type LostQuote = {
  readonly quoteId: string;
  readonly number: number;
  readonly customer: string;
  readonly grossMinor: number;
  readonly declinedAt: Date;
  /** In the customer's words; empty where none were given. */
  readonly because: string;
};

/** Quotes declined since then and not taken up again, the newest first. */
export async function lostQuotes(
  tx: Transaction,
  { since }: { readonly since: Date },
): Promise<readonly LostQuote[]> {
  const rows = await tx.quoteVersion.findMany({
    where: { status: "declined", declinedAt: { gte: since } },
    orderBy: { declinedAt: "desc" },
    include: {
      quote: { include: { customer: true, versions: { select: { versionNo: true, issuedAt: true } } } },
    },
  });
  return rows.flatMap(({ quote, versionNo, grossMinor, declinedAt, declinedBecause }) => {
    const isLast = quote.versions.every((other) => other.versionNo <= versionNo || other.issuedAt === null);
    if (!isLast || !declinedAt) return [];
    const { id: quoteId, number, customer } = quote;
    return [
      {
        quoteId,
        number,
        customer: customer.name,
        grossMinor: Number(grossMinor),
        declinedAt,
        because: declinedBecause,
      },
    ];
  });
}
