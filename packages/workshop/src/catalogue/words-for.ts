import type { Transaction } from "@buildproof/database";
import type { ActingPerson } from "../core/actor";
import { mayDo } from "../core/permissions";
import { readSite } from "../core/site";
import { catalogueNames } from "./catalogue-names";
import type { CatalogueState } from "./catalogue-state";
import type { WordsFor } from "./content-words";
import type { PartChange } from "./part-content";

/** What it takes to put the catalogue into words for this person. */
export async function wordsFor(
  tx: Transaction,
  person: ActingPerson,
  state: CatalogueState,
  changes: readonly PartChange[] = [],
): Promise<WordsFor> {
  const { currency } = await readSite(tx);
  return {
    names: catalogueNames(state, await readModelNames(tx), changes),
    currency,
    showsPrice: mayDo("quotes:read", person.roles),
    showsCost: mayDo("catalogue:write", person.roles),
  };
}

/** Vehicle models by code, in the order of their names. */
export async function readModelNames(tx: Transaction): Promise<ReadonlyMap<string, string>> {
  const rows = await tx.vehicleModel.findMany({
    select: { code: true, name: true },
    orderBy: { name: "asc" },
  });
  return new Map(rows.map(({ code, name }) => [code, name]));
}
