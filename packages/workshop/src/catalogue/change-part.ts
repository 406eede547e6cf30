import { isDeepStrictEqual } from "node:util";
import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { asJson } from "../core/audit";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { command, type PersonWork } from "../core/use-case";
import { figureFaults } from "./components/figure-faults";
import { type ContentOf, type PartChange, type PartKind, partContent } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { readVersion } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";

const code = z
  .string()
  .trim()
  .regex(
    /^[a-z0-9][a-z0-9-]*$/,
    "A code is written in small letters, digits and hyphens, such as pump-upgrade.",
  )
  .max(60, "Keep the code under 60 characters.");

function changeOf<Part extends PartKind>(part: Part) {
  return z.strictObject({
    versionId: z.uuid("Open the draft again."),
    revision,
    part: z.literal(part),
    code,
    /** The part was not there before. */
    isNew: z.boolean().default(false),
    /** Null takes it out of the catalogue. */
    after: partContent[part].nullable(),
  });
}

/** Writes one part of a draft: as it shall be, or gone. */
export const changePart = command({
  name: "catalogue.change-part",
  permission: "catalogue:write",
  input: z.discriminatedUnion("part", [
    changeOf("item"),
    changeOf("group"),
    changeOf("rule"),
    changeOf("package"),
    changeOf("operation"),
    changeOf("access"),
  ]),
  async run(work, input) {
    const open = await openDraft(work.tx, input.versionId);
    if (!open.ok) return open;
    const state = await readCatalogueState(work.tx);
    const now = state.parts[input.part].get(input.code) ?? null;
    const drafted = open.value.changes.find(({ part, code }) => part === input.part && code === input.code);
    if (input.isNew && (now ?? drafted?.after)) return refuseCatalogue("code-taken", { code: input.code });
    if (!input.isNew && !now && !drafted) return refuseCatalogue("part-unknown", { code: input.code });
    if (input.part === "item" && input.after) {
      const { component, figures } = input.after as ContentOf<"item">; // Its part was just compared.
      const points = figureFaults(component, figures).map(({ sentence }) => sentence);
      if (points.length > 0) return refuseCatalogue("figures-wrong", { points });
    }
    if (isDeepStrictEqual(now, input.after) && !drafted) return refuseCatalogue("part-unchanged");
    return writeChange(work, input.versionId, input.revision, {
      part: input.part,
      code: input.code,
      before: now,
      after: input.after,
    });
  },
});

/** Refuses what is not there or is published. A scheduled version is still open to change. */
export async function openDraft(tx: Transaction, versionId: string) {
  const version = await readVersion(tx, versionId);
  if (!version) return refuseCatalogue("version-not-found");
  if (version.number !== null) return refuseCatalogue("version-published", { number: version.number });
  return ok(version);
}

type Change = {
  readonly part: PartKind;
  readonly code: string;
  readonly before: ContentOf<PartKind> | null;
  readonly after: ContentOf<PartKind> | null;
};

/** Puts a change in place of what the draft said of that part; one that changes nothing is dropped. */
export async function writeChange(
  { tx, workshopId, now, audit }: PersonWork,
  versionId: string,
  seen: number,
  change: Change,
): Promise<Result<{ readonly revision: number }>> {
  const { count } = await tx.catalogueVersion.updateMany({
    where: { id: versionId, revision: seen },
    data: { revision: { increment: 1 } },
  });
  if (count === 0) return refuseCatalogue("stale");
  await storeChanges(tx, workshopId, versionId, now, [change]);
  audit({
    entity: "catalogue-version",
    entityId: versionId,
    before: { part: change.part, code: change.code, content: change.before },
    after: { part: change.part, code: change.code, content: change.after },
  });
  return ok({ revision: seen + 1 });
}

/** Writes changes into a draft, each in place of what it said of that part. */
export async function storeChanges(
  tx: Transaction,
  workshopId: string,
  versionId: string,
  now: Date,
  changes: readonly (Change | PartChange)[],
): Promise<void> {
  for (const { part, code } of changes)
    await tx.catalogueChange.deleteMany({ where: { versionId, part, code } });
  await tx.catalogueChange.createMany({
    data: changes
      .filter(({ before, after }) => !isDeepStrictEqual(before, after))
      .map(({ part, code, before, after }) => ({
        id: newId(),
        workshopId,
        versionId,
        part,
        code,
        changedAt: now,
        ...(before === null ? {} : { before: asJson(before) }),
        ...(after === null ? {} : { after: asJson(after) }),
      })),
  });
}
