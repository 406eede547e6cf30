import { z } from "zod";
import { atField } from "../core/at-field";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { readSite } from "../core/site";
import { dateInZone, isoDateOf, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { openDraft } from "./draft-changes";
import { refuseCatalogue } from "./refuse-catalogue";

const versionId = z.uuid("Open the draft again.");

/** Sets the day from which a draft holds, by the site's calendar. It can still be changed until then. */
export const scheduleVersion = command({
  name: "catalogue.schedule-version",
  permission: "catalogue:write",
  input: z.strictObject({ versionId, revision, on: z.iso.date("Choose the day from which it holds.") }),
  async run({ tx, person, now, audit }, input) {
    const open = await openDraft(tx, input.versionId);
    if (!open.ok) return open;
    if (open.value.changes.length === 0) return refuseCatalogue("nothing-changed");
    const { timeZone } = await readSite(tx);
    if (input.on <= dateInZone(now, timeZone)) return atField("on", refuseCatalogue("day-is-past"));
    const { count } = await tx.catalogueVersion.updateMany({
      where: { id: input.versionId, revision: input.revision },
      data: {
        state: "scheduled",
        publishOn: storedDate(input.on),
        publishedById: person.id,
        revision: { increment: 1 },
      },
    });
    if (count === 0) return refuseCatalogue("stale");
    const { publishOn } = open.value;
    audit({
      entity: "catalogue-version",
      entityId: input.versionId,
      before: { publishOn: publishOn ? isoDateOf(publishOn) : null },
      after: { publishOn: input.on },
    });
    return ok({ on: input.on });
  },
});

/** Makes a version that waits for its day a draft again. */
export const withdrawVersion = command({
  name: "catalogue.withdraw-version",
  permission: "catalogue:write",
  input: z.strictObject({ versionId, revision }),
  async run({ tx, audit }, input) {
    const open = await openDraft(tx, input.versionId);
    if (!open.ok) return open;
    const { state, publishOn } = open.value;
    if (state !== "scheduled") return refuseCatalogue("not-scheduled");
    const { count } = await tx.catalogueVersion.updateMany({
      where: { id: input.versionId, revision: input.revision },
      data: { state: "draft", publishOn: null, publishedById: null, revision: { increment: 1 } },
    });
    if (count === 0) return refuseCatalogue("stale");
    audit({
      entity: "catalogue-version",
      entityId: input.versionId,
      before: { publishOn: publishOn ? isoDateOf(publishOn) : null },
      after: { publishOn: null },
    });
    return ok({ revision: input.revision + 1 });
  },
});
