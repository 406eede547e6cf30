import type { Transaction } from "@buildproof/database";
import { creditLeft } from "./credit-left";

/** The invoice of a quote that is not taken back whole; null when there is none. */
export async function standingInvoice(tx: Transaction, quoteId: string) {
  const invoices = await tx.invoice.findMany({
    where: { quoteId, kind: "invoice" },
    orderBy: { number: "desc" },
  });
  for (const invoice of invoices) if ((await creditLeft(tx, invoice)).leftMinor > 0) return invoice;
  return null;
}
