import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft } from "./draft-changes";
import { refuseCatalogue } from "./refuse-catalogue";
import { versionTitle } from "./start-version";

const versionId = z.uuid("Open the draft again.");

/** Gives a draft another title. */
export const renameVersion = command({
  name: "catalogue.rename-version",
  permission: "catalogue:write",
  input: z.strictObject({ versionId, revision, title: versionTitle }),
  async run({ tx, audit }, input) {
    const open = await openDraft(tx, input.versionId);
    if (!open.ok) return open;
    const { count } = await tx.catalogueVersion.updateMany({
      where: { id: input.versionId, revision: input.revision },
      data: { title: input.title, revision: { increment: 1 } },
    });
    if (count === 0) return refuseCatalogue("stale");
    audit({
      entity: "catalogue-version",
      entityId: input.versionId,
      before: { title: open.value.title },
      after: { title: input.title },
    });
    return ok({ revision: input.revision + 1 });
  },
});

/** Throws a draft away with all its changes; the audit record keeps what they were. */
export const discardVersion = command({
  name: "catalogue.discard-version",
  permission: "catalogue:write",
  input: z.strictObject({ versionId, revision }),
  async run({ tx, audit }, input) {
    const open = await openDraft(tx, input.versionId);
    if (!open.ok) return open;
    const { title, changes } = open.value;
    const { count } = await tx.catalogueVersion.deleteMany({
      where: { id: input.versionId, revision: input.revision },
    });
    if (count === 0) return refuseCatalogue("stale");
    audit({ entity: "catalogue-version", entityId: input.versionId, before: { title, changes } });
    return ok({ title });
  },
});
