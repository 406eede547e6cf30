import { z } from "zod";
import { atField } from "../core/at-field";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { packageDraft } from "./bundle/package-draft";
import { codeFrom } from "./code-from";
import { packageContent } from "./part-content";
import { refuseCatalogue } from "./refuse-catalogue";
import { partCode, writePart } from "./write-part";

/** Writes a package into a draft, or into a new draft where none is named. */
export const savePackage = command({
  name: "catalogue.save-package",
  permission: "catalogue:write",
  input: z.strictObject({
    versionId: z.uuid("Open the draft again.").nullable(),
    revision,
    /** Null for a new package, which is named after what it is called. */
    code: partCode.nullable(),
    ...packageContent.omit({ position: true }).shape,
  }),
  async run(work, { versionId, revision: seen, code, ...content }) {
    if (content.items.length === 0 && content.choices.length === 0)
      return atField("items", refuseCatalogue("package-empty"));
    const empty = content.choices.find((choice) => choice.name.trim() === "" || choice.items.length === 0);
    if (empty) return atField("choices", refuseCatalogue("package-choice-empty"));
    const draft = await packageDraft(
      work,
      { versionId, revision: seen },
      `Package ${content.name}`.slice(0, 120),
    );
    if (!draft.ok) return draft;
    const written = await writePart(work, {
      ...draft.value,
      part: "package",
      code: code ?? codeFrom(content.name),
      isNew: code === null,
      after: { ...content, position: 0 },
    });
    return written.ok ? ok({ versionId: draft.value.versionId, code: written.value.code }) : written;
  },
});
