import type { Transaction } from "@buildproof/database";

/** The links that were made to a version, newest first. What a link was is known; what it is opened by is not. */
export async function linksOf(tx: Transaction, versionId: string, now: Date) {
  const links = await tx.customerLink.findMany({ where: { versionId }, orderBy: { createdAt: "desc" } });
  return links.map(({ id, createdAt, expiresAt, revokedAt }) => ({
    id,
    createdAt,
    expiresAt,
    state: revokedAt ? ("closed" as const) : expiresAt <= now ? ("expired" as const) : ("open" as const),
  }));
}
