import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { nextNumber } from "../core/next-number";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { applyChange, makeItems } from "./apply-change";
import { withChanges } from "./catalogue-state";
import { dangling } from "./dangling";
import { openDraft } from "./draft-changes";
import { overtakenChanges } from "./overtaken";
import { nameOfChange, type PartChange } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import type { StoredVersion } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";

/** Makes a draft the catalogue that is sold from, all of it at once. */
export const publishVersion = command({
  name: "catalogue.publish-version",
  permission: "catalogue:write",
  isolation: "Serializable",
  timeoutMs: 120_000,
  input: z.strictObject({ versionId: z.uuid("Open the draft again."), revision }),
  async run({ tx, workshopId, person, now, audit }, input) {
    const open = await openDraft(tx, input.versionId);
    if (!open.ok) return open;
    if (open.value.revision !== input.revision) return refuseCatalogue("stale");
    const published = await publish(tx, workshopId, open.value, { by: person.id, at: now });
    if (!published.ok) return published;
    const { number } = published.value;
    audit({
      entity: "catalogue-version",
      entityId: input.versionId,
      after: { number, changes: open.value.changes.length },
    });
    return ok({ number });
  },
});

/** Applies a version's changes and gives it its number. Refuses what was overtaken or would point nowhere. */
export async function publish(
  tx: Transaction,
  workshopId: string,
  version: StoredVersion,
  { by, at }: { readonly by: string; readonly at: Date },
): Promise<Result<{ readonly number: number }>> {
  if (version.changes.length === 0) return refuseCatalogue("nothing-changed");
  const state = await readCatalogueState(tx);
  const overtaken = overtakenChanges(state, version.changes);
  if (overtaken.length > 0) return refuseCatalogue("overtaken", { points: overtaken.map(nameOfChange) });
  const models = new Set(
    (await tx.vehicleModel.findMany({ select: { code: true } })).map(({ code }) => code),
  );
  const before = new Set(dangling(state, models));
  const points = dangling(withChanges(state, version.changes), models).filter((point) => !before.has(point));
  if (points.length > 0) return refuseCatalogue("points-nowhere", { points });
  const isMade = ({ part, code, after }: PartChange) => part === "item" && after && !state.stock.has(code);
  await makeItems(tx, workshopId, version.changes.filter(isMade));
  for (const change of version.changes) if (!isMade(change)) await applyChange(tx, workshopId, change);
  const number = await nextNumber(tx, workshopId, "catalogue");
  await tx.catalogueVersion.update({
    where: { id: version.id },
    data: { state: "published", number, publishedById: by, publishedAt: at, revision: { increment: 1 } },
  });
  return ok({ number });
}
