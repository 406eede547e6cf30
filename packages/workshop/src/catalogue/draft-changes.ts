import { isDeepStrictEqual } from "node:util";
import type { Transaction } from "@buildproof/database";
import { asJson } from "../core/audit";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import type { PersonWork } from "../core/use-case";
import { type ContentOf, type PartChange, type PartKind, partKinds } from "./part-content";
import { readVersion } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";

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
  const rows = changes
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
    }));
  for (const part of partKinds) {
    const codes = changes.filter((change) => change.part === part).map(({ code }) => code);
    for (const some of inRuns(codes))
      await tx.catalogueChange.deleteMany({ where: { versionId, part, code: { in: [...some] } } });
  }
  for (const some of inRuns(rows)) await tx.catalogueChange.createMany({ data: [...some] });
}

/** As many at once as one statement may carry. */
function inRuns<Each>(all: readonly Each[]): readonly (readonly Each[])[] {
  const most = 1_000;
  return Array.from({ length: Math.ceil(all.length / most) }, (_, run) =>
    all.slice(run * most, (run + 1) * most),
  );
}
