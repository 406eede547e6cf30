import type { Transaction } from "@buildproof/database";
import { invoiceContent } from "./invoice-content";

/** What of an invoice was taken back, and what is left. */
export async function creditLeft(
  tx: Transaction,
  invoice: { readonly id: string; readonly grossMinor: bigint },
) {
  const notes = await tx.invoice.findMany({ where: { creditsId: invoice.id } });
  const lines = notes.flatMap(({ content }) => invoiceContent.parse(content).lines);
  const creditedMinor = notes.reduce((sum, { grossMinor }) => sum + grossMinor, 0n);
  return {
    leftMinor: Number(invoice.grossMinor - creditedMinor),
    creditedPositions: new Set(lines.map(({ position }) => position)),
  };
}
