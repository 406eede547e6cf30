import type { Transaction } from "@buildproof/database";
import { overtakenChanges } from "../catalogue/overtaken";
import { nameOfChange } from "../catalogue/part-content";
import { readCatalogueState } from "../catalogue/read-catalogue-state";
import { readVersion } from "../catalogue/read-version";
import { isoDateOf, storedDate } from "../core/site-date";
import { dayWords, type Moment, type Owed } from "./owed";

/** Versions of the catalogue whose day has come and which were not published: why, for who may put it right. */
export async function owedOnCatalogue(tx: Transaction, { today }: Moment): Promise<readonly Owed[]> {
  const rows = await tx.catalogueVersion.findMany({
    where: { state: "scheduled", publishOn: { lte: storedDate(today) } },
    include: { publishedBy: true },
  });
  if (rows.length === 0) return [];
  const state = await readCatalogueState(tx);
  const owed: Owed[] = [];
  for (const row of rows) {
    const version = await readVersion(tx, row.id);
    const overtaken = overtakenChanges(state, version?.changes ?? []).map(nameOfChange);
    const on = isoDateOf(row.publishOn ?? storedDate(today));
    owed.push({
      kind: "catalogue-held",
      sentence: `“${row.title}” should hold in the catalogue from ${dayWords(on)} and was not published: ${why(overtaken, row.publishedBy)}`,
      since: on,
      action: { label: "Look at the version", place: "catalogue", id: row.id },
    });
  }
  return owed;
}

function why(
  overtaken: readonly string[],
  setBy: { readonly name: string; readonly active: boolean } | null,
): string {
  if (overtaken.length > 0) return `a newer version has changed ${overtaken.join(", ")} since.`;
  if (setBy && !setBy.active) return `${setBy.name}, who set the day, has left.`;
  return "something in it points at what is not there, or it is a minute from being published.";
}
