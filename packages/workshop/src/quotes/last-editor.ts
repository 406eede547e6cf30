import type { Transaction } from "@buildproof/database";

/** Who touched a version last, by the audit record; empty when it does not say. */
export async function lastEditor(tx: Transaction, versionId: string): Promise<string> {
  const event = await tx.auditEvent.findFirst({
    where: { entity: "quote-version", entityId: versionId },
    orderBy: [{ at: "desc" }, { id: "desc" }],
  });
  return event?.actorKind === "person" ? event.actorName : "";
}
