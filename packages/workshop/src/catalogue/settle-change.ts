import { z } from "zod";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft, writeChange } from "./draft-changes";
import { partKind } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { refuseCatalogue } from "./refuse-catalogue";

const input = z.strictObject({
  versionId: z.uuid("Open the draft again."),
  revision,
  part: partKind,
  code: z.string().max(60),
});

/** Takes one change out of a draft again: the part stays as the catalogue has it. */
export const undoChange = command({
  name: "catalogue.undo-change",
  permission: "catalogue:write",
  input,
  async run(work, { versionId, revision: seen, part, code }) {
    const open = await openDraft(work.tx, versionId);
    if (!open.ok) return open;
    const change = open.value.changes.find((each) => each.part === part && each.code === code);
    if (!change) return refuseCatalogue("change-not-found");
    return writeChange(work, versionId, seen, { part, code, before: change.after, after: change.after });
  },
});

/** Keeps a change that a newer catalogue overtook: the part becomes what the draft says, whatever it is now. */
export const keepChange = command({
  name: "catalogue.keep-change",
  permission: "catalogue:write",
  input,
  async run(work, { versionId, revision: seen, part, code }) {
    const open = await openDraft(work.tx, versionId);
    if (!open.ok) return open;
    const change = open.value.changes.find((each) => each.part === part && each.code === code);
    if (!change) return refuseCatalogue("change-not-found");
    const before = (await readCatalogueState(work.tx)).parts[part].get(code) ?? null;
    return writeChange(work, versionId, seen, { part, code, before, after: change.after });
  },
});
