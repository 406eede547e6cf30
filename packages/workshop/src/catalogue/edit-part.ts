import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { baseName, conditionFacts } from "../builds/fact-words";
import { storedFacts } from "../builds/stored-catalogue";
import { chainLinks, systems } from "../builds/systems";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { type CatalogueState, withChanges } from "./catalogue-state";
import { type ContentOf, type PartKind, partKind } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { readVersion } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";
import { readModelNames, wordsFor } from "./words-for";

/** One part as a draft would have it, for its form, with what the form needs to choose from. */
export const editPart = query({
  name: "catalogue.edit-part",
  permission: "catalogue:write",
  input: z.strictObject({
    versionId: z.uuid("Open the draft again."),
    part: partKind,
    /** Null for a part that is not there yet. */
    code: z.string().max(60).nullable(),
  }),
  async run({ tx, person }, { versionId, part, code }) {
    const version = await readVersion(tx, versionId);
    if (!version) return refuseCatalogue("version-not-found");
    if (version.number !== null) return refuseCatalogue("version-published", { number: version.number });
    const state = withChanges(await readCatalogueState(tx), version.changes);
    const content = code === null ? null : (state.parts[part].get(code) ?? state.retired.get(code) ?? null);
    const isDrafted = version.changes.some((change) => change.part === part && change.code === code);
    if (code !== null && !content && !isDrafted) return refuseCatalogue("part-not-found", { code });
    const on = await wordsFor(tx, person, state, version.changes);
    const { id, title, revision } = version;
    return ok({
      version: { id, title, revision },
      part,
      code,
      content: content as ContentOf<PartKind> | null, // Chosen by the part, which stands beside it.
      isDrafted,
      currency: on.currency,
      ...(await readChoices(tx, state)),
    });
  },
});

async function readChoices(tx: Transaction, { parts }: CatalogueState) {
  const named = (map: ReadonlyMap<string, { readonly name: string }>) =>
    [...map].map(([code, { name }]) => ({ code, name }));
  return {
    items: named(parts.item),
    operations: named(parts.operation),
    access: named(parts.access),
    models: [...(await readModelNames(tx))].map(([code, name]) => ({ code, name })),
    links: chainLinks,
    systems: systems.map(({ code, name }) => ({ code, name })),
    ...(await readFacts(tx)),
  };
}

/** What a condition can ask of a vehicle, and what a vehicle can give to a limit: named ones first. */
async function readFacts(tx: Transaction) {
  const rows = await tx.vehicleModel.findMany({ select: { facts: true } });
  const known = new Set(rows.flatMap(({ facts }) => Object.keys(storedFacts.parse(facts))));
  const unnamed = [...known]
    .filter((code) => !conditionFacts.some((fact) => fact.code === code))
    .toSorted()
    .map((code) => ({ code, name: code }));
  const named = conditionFacts.map(({ code, label, unit, is }) => ({
    code,
    name: unit ? `${label}, ${unit}` : label,
    isSo: is === "so",
  }));
  return {
    facts: [...named, ...unnamed.map((fact) => ({ ...fact, isSo: false }))],
    bases: [...known].toSorted().map((code) => ({ code, name: baseName(code) })),
  };
}
