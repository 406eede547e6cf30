import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { addDays, dateInZone, isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { changeInWords } from "./change-words";
import { overtakenChanges } from "./overtaken";
import { readCatalogueState } from "./read-catalogue-state";
import { readVersion } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";
import { wordsFor } from "./words-for";

/** One version with what it changes, in words; of a draft also what was overtaken by a newer catalogue. */
export const showVersion = query({
  name: "catalogue.show-version",
  permission: "catalogue:read",
  input: z.strictObject({ versionId: z.uuid() }),
  async run({ tx, person, now }, { versionId }) {
    const version = await readVersion(tx, versionId);
    if (!version) return refuseCatalogue("version-not-found");
    const state = await readCatalogueState(tx);
    const on = await wordsFor(tx, person, state, version.changes);
    const overtaken = version.number === null ? overtakenChanges(state, version.changes) : [];
    const head = await tx.catalogueVersion.findUniqueOrThrow({
      where: { id: versionId },
      include: { createdBy: true, publishedBy: true },
    });
    const { timeZone } = await readSite(tx);
    return ok({
      id: version.id,
      number: version.number,
      title: version.title,
      state: version.state,
      revision: version.revision,
      publishOn: version.publishOn ? isoDateOf(version.publishOn) : null,
      tomorrow: addDays(dateInZone(now, timeZone), 1),
      timeZone,
      by: head.createdBy.name,
      at: head.createdAt,
      publishedBy: head.publishedBy?.name ?? null,
      publishedAt: head.publishedAt,
      changes: version.changes.map((change) => {
        const theirs = overtaken.find(({ part, code }) => part === change.part && code === change.code);
        return {
          ...changeInWords(change, on),
          /** What became of the part since this was drafted; null when nothing did. */
          theirs: theirs ? changeInWords(theirs, on).differences : null,
        };
      }),
    });
  },
});
