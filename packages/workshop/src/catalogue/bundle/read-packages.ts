import type { Transaction } from "@buildproof/database";
import type { Catalogue } from "../../builds/catalogue-rows";
import { ok, type Result } from "../../core/result";
import { readSite, type Site } from "../../core/site";
import { catalogueOfState } from "../catalogue-of-state";
import { type CatalogueState, withChanges } from "../catalogue-state";
import { openDraft } from "../draft-changes";
import { readCatalogueState } from "../read-catalogue-state";
import type { ModelRow } from "./assess-package";

/** The catalogue as it stands or as a draft would have it, with what packages are worked out against. */
export type PackagesSetting = {
  readonly draft: { readonly id: string; readonly title: string; readonly revision: number } | null;
  readonly state: CatalogueState;
  readonly catalogue: Catalogue;
  readonly site: Site;
  readonly models: readonly ModelRow[];
};

export async function readPackages(
  tx: Transaction,
  versionId: string | null,
): Promise<Result<PackagesSetting>> {
  const open = versionId === null ? null : await openDraft(tx, versionId);
  if (open && !open.ok) return open;
  const now = await readCatalogueState(tx);
  const state = open ? withChanges(now, open.value.changes) : now;
  const models = await tx.vehicleModel.findMany({
    select: { code: true, name: true, facts: true, figures: true },
    orderBy: { name: "asc" },
  });
  const site = await readSite(tx);
  const draft = open ? { id: open.value.id, title: open.value.title, revision: open.value.revision } : null;
  return ok({ draft, state, catalogue: catalogueOfState(state), site, models });
}
