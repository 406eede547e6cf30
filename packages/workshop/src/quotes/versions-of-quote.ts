import type { Transaction } from "@buildproof/database";
import { isoDateOf } from "../core/site-date";
import { statusNow } from "./version-status";

type Row = Awaited<ReturnType<Transaction["quoteVersion"]["findFirstOrThrow"]>>;

/** Every version of a quote in a line: what became of it, when, and by whom. */
export async function versionsOf(tx: Transaction, rows: readonly Row[], now: Date, timeZone: string) {
  const ids = rows.map(({ id }) => id);
  const acceptances = await tx.acceptance.findMany({ where: { versionId: { in: ids } } });
  return rows.map((row) => {
    const acceptance = acceptances.find(({ versionId }) => versionId === row.id);
    return {
      id: row.id,
      versionNo: row.versionNo,
      status: statusNow(row, now, timeZone),
      grossMinor: Number(row.grossMinor),
      validUntil: isoDateOf(row.validUntil),
      issuedAt: row.issuedAt,
      acceptance: acceptance ? { name: acceptance.name, at: acceptance.at } : null,
      decline: row.declinedAt ? { at: row.declinedAt, reason: row.declinedBecause } : null,
    };
  });
}
