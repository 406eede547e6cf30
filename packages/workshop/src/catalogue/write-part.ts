import { isDeepStrictEqual } from "node:util";
import { z } from "zod";
import type { Result } from "../core/result";
import type { PersonWork } from "../core/use-case";
import type { CatalogueState } from "./catalogue-state";
import { figureFaults } from "./components/figure-faults";
import { openDraft, writeChange } from "./draft-changes";
import type { ContentOf, PartKind } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { refuseCatalogue } from "./refuse-catalogue";

export const partCode = z
  .string()
  .trim()
  .regex(
    /^[a-z0-9][a-z0-9-]*$/,
    "A code is written in small letters, digits and hyphens, such as pump-upgrade.",
  )
  .max(60, "Keep the code under 60 characters.");

type WrittenPart = {
  readonly versionId: string;
  readonly revision: number;
  readonly part: PartKind;
  readonly code: string;
  readonly isNew: boolean;
  readonly after: ContentOf<PartKind> | null;
};

/** Writes one part into a draft, as it shall be or gone. What is new stands last; what stands keeps its place. */
export async function writePart(
  work: PersonWork,
  input: WrittenPart,
): Promise<Result<{ readonly revision: number; readonly code: string }>> {
  const { versionId, part, code, isNew } = input;
  const open = await openDraft(work.tx, versionId);
  if (!open.ok) return open;
  const state = await readCatalogueState(work.tx);
  const now = state.parts[part].get(code) ?? null;
  const drafted = open.value.changes.find((change) => change.part === part && change.code === code);
  const isKept = part === "item" && state.retired.has(code);
  if (isNew && (now ?? drafted?.after ?? isKept)) return refuseCatalogue("code-taken", { code });
  if (!isNew && !now && !drafted && !isKept) return refuseCatalogue("part-unknown", { code });
  const after = placed(state, part, drafted?.after ?? now, input.after);
  if (part === "item" && after) {
    const { component, figures } = after as ContentOf<"item">; // Its part was just compared.
    const points = figureFaults(component, figures).map(({ sentence }) => sentence);
    if (points.length > 0) return refuseCatalogue("figures-wrong", { points });
  }
  if (isDeepStrictEqual(now, after) && !drafted) return refuseCatalogue("part-unchanged");
  const change = { part, code, before: now, after };
  const written = await writeChange(work, versionId, input.revision, change);
  return written.ok ? { ok: true, value: { ...written.value, code } } : written;
}

function placed(
  { parts }: CatalogueState,
  part: PartKind,
  standing: ContentOf<PartKind> | null,
  after: ContentOf<PartKind> | null,
): ContentOf<PartKind> | null {
  if (!after || !("position" in after)) return after;
  if (standing && "position" in standing) return { ...after, position: standing.position };
  const last = [...parts[part].values()].map((each) => ("position" in each ? each.position : 0));
  return { ...after, position: Math.max(-1, ...last) + 1 };
}
