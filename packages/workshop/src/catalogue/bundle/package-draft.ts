import { newId } from "../../core/new-id";
import { ok, type Result } from "../../core/result";
import type { PersonWork } from "../../core/use-case";
import { openDraft } from "../draft-changes";

type Draft = { readonly versionId: string; readonly revision: number };

/** The draft that was named, or a new one where none was. */
export async function packageDraft(
  { tx, workshopId, person, now, audit }: PersonWork,
  named: { readonly versionId: string | null; readonly revision: number },
  title: string,
): Promise<Result<Draft>> {
  if (named.versionId !== null) {
    const open = await openDraft(tx, named.versionId);
    return open.ok ? ok({ versionId: named.versionId, revision: named.revision }) : open;
  }
  const id = newId();
  await tx.catalogueVersion.create({
    data: { id, workshopId, title, createdById: person.id, createdAt: now },
  });
  audit({ entity: "catalogue-version", entityId: id, after: { title } });
  return ok({ versionId: id, revision: 1 });
}
