import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command, query } from "../core/use-case";
import { withChanges } from "./catalogue-state";
import { codeFrom } from "./code-from";
import { readCatalogueState } from "./read-catalogue-state";
import { readVersion } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";
import { ruleSentence } from "./rule-sentence";
import { ruleFromTyped, typedRule } from "./typed-rule";
import { wordsFor } from "./words-for";
import { partCode, writePart } from "./write-part";

const versionId = z.uuid("Open the draft again.");

/** Writes a rule of a draft from the choices on its form. A new one is named after its reason. */
export const saveRule = command({
  name: "catalogue.save-rule",
  permission: "catalogue:write",
  input: z.strictObject({
    versionId,
    revision,
    code: z.union([z.literal(""), partCode]),
    isNew: z.boolean(),
    rule: typedRule,
  }),
  run: (work, { code, rule, ...at }) =>
    writePart(work, {
      ...at,
      part: "rule",
      code: code || codeFrom(rule.because.split(/\s+/).slice(0, 7).join(" ")),
      after: ruleFromTyped(rule),
    }),
});

/** Reads choices that are not saved yet back as the sentence they make. */
export const readRuleBack = query({
  name: "catalogue.read-rule-back",
  permission: "catalogue:read",
  input: z.strictObject({ versionId, rule: typedRule }),
  async run({ tx, person }, { versionId: id, rule }) {
    const version = await readVersion(tx, id);
    if (!version) return refuseCatalogue("version-not-found");
    const state = withChanges(await readCatalogueState(tx), version.changes);
    const { names } = await wordsFor(tx, person, state, version.changes);
    return ok({ sentence: ruleSentence(ruleFromTyped(rule), names) });
  },
});
