import type { Transaction } from "@buildproof/database";

/** What the customer asked and the workshop answered on a quote, in the order it was said. */
export async function messagesOf(tx: Transaction, quoteId: string) {
  const rows = await tx.quoteMessage.findMany({
    where: { quoteId },
    orderBy: [{ at: "asc" }, { id: "asc" }],
    include: { person: { select: { name: true } }, version: { select: { versionNo: true } } },
  });
  return rows.map(({ id, fromCustomer, text, at, person, version }) => ({
    id,
    fromCustomer,
    text,
    at,
    by: person?.name ?? null,
    versionNo: version.versionNo,
  }));
}
