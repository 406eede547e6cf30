import type { Transaction } from "@buildproof/database";
import { catalogueOfState } from "../catalogue/catalogue-of-state";
import { readCatalogueState } from "../catalogue/read-catalogue-state";
import type { Catalogue } from "./catalogue-rows";

/** What the workshop sells and knows at this moment. */
export async function readCatalogue(tx: Transaction): Promise<Catalogue> {
  return catalogueOfState(await readCatalogueState(tx));
}
