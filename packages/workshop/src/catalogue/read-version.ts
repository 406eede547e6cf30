import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { type PartChange, type PartKind, partContent } from "./part-content";

export type StoredVersion = {
  readonly id: string;
  readonly number: number | null;
  readonly title: string;
  readonly state: "draft" | "scheduled" | "published";
  readonly publishOn: Date | null;
  readonly revision: number;
  readonly changes: readonly PartChange[];
};

/** A version with its changes, in the order of the parts. Null when this workshop has none such. */
export async function readVersion(tx: Transaction, versionId: string): Promise<StoredVersion | null> {
  const row = await tx.catalogueVersion.findUnique({
    where: { id: versionId },
    include: { changes: { orderBy: [{ part: "asc" }, { code: "asc" }] } },
  });
  if (!row) return null;
  const { id, number, title, state, publishOn, revision } = row;
  return { id, number, title, state, publishOn, revision, changes: row.changes.map(storedChange) };
}

/** A change as its row holds it, its content held against the schema of its part. */
export function storedChange(row: {
  readonly part: PartKind;
  readonly code: string;
  readonly before: unknown;
  readonly after: unknown;
}): PartChange {
  const content = z.union([partContent[row.part], z.null()]);
  return {
    part: row.part,
    code: row.code,
    before: content.parse(row.before),
    after: content.parse(row.after),
  } as PartChange; // The schema was chosen by the part.
}
