import { isDeepStrictEqual } from "node:util";
import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { storeChanges } from "./draft-changes";
import type { PartChange } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { storedChange } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";

/**
 * Opens a draft that makes the catalogue what it was after a version: what every later one changed, undone.
 * Number 0 is the catalogue before its first version. Nothing is undone until the draft is published.
 */
export const goBack = command({
  name: "catalogue.go-back",
  permission: "catalogue:write",
  input: z.strictObject({ number: z.number().int().min(0) }),
  async run({ tx, workshopId, person, now, audit }, { number }) {
    if (number > 0 && !(await tx.catalogueVersion.findFirst({ where: { number } })))
      return refuseCatalogue("version-not-found");
    const changes = await undoingAfter(tx, number);
    if (changes.length === 0) return refuseCatalogue("nothing-to-undo", { number });
    const id = newId();
    const title = number === 0 ? "Back to how it began" : `Back to version ${number}`;
    await tx.catalogueVersion.create({
      data: { id, workshopId, title, createdById: person.id, createdAt: now },
    });
    await storeChanges(tx, workshopId, id, now, changes);
    audit({ entity: "catalogue-version", entityId: id, after: { title, changes: changes.length } });
    return ok({ versionId: id });
  },
});

/** From what each part is now to what it was before the first version after that number touched it. */
async function undoingAfter(tx: Transaction, number: number): Promise<readonly PartChange[]> {
  const rows = await tx.catalogueChange.findMany({
    where: { version: { state: "published", number: { gt: number } } },
    orderBy: { version: { number: "asc" } },
  });
  const state = await readCatalogueState(tx);
  const undoing = new Map<string, PartChange>();
  for (const row of rows) {
    const key = `${row.part} ${row.code}`;
    if (undoing.has(key)) continue;
    const before = state.parts[row.part].get(row.code) ?? null;
    const { before: after } = storedChange(row);
    undoing.set(key, { part: row.part, code: row.code, before, after } as PartChange); // Both are of this part.
  }
  return [...undoing.values()].filter(({ before, after }) => !isDeepStrictEqual(before, after));
}
