import { z } from "zod";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { openDraft } from "./draft";
import { lastEditor } from "./last-editor";
import { lockQuote } from "./lock-quote";
import { openPoints } from "./open-points";
import { refuse } from "./refuse-quote";
import { startedJobRefusal } from "./started-job";

/**
 * Issues a draft: from now on it does not change. The version that was in force before is superseded in the same
 * transaction. Everything still open is told at once.
 */
export const issueVersion = command({
  name: "quotes.issue",
  permission: "quotes:issue",
  input: z.strictObject({ versionId: z.uuid(), revision }),
  async run(work, seen) {
    const { tx } = work;
    const version = await tx.quoteVersion.findUnique({ where: { id: seen.versionId } });
    if (!version) return refuse("version-not-found");
    await lockQuote(tx, version.quoteId);
    const opened = await openDraft(work, seen, ({ rows }) => [`The draft now has ${rows.length} lines.`]);
    if (!opened.ok) return opened;
    const draft = opened.value;
    const started = await startedJobRefusal(tx, draft.quoteId);
    if (started) return started;
    const { points } = await openPoints(tx, draft.buildId, draft, draft.site, work.now);
    if (points.length > 0) return refuse("open-points", { points });

    const live = await tx.quoteVersion.findMany({
      where: { quoteId: draft.quoteId, status: { in: ["issued", "accepted"] } },
    });
    for (const { id, status, versionNo } of live) {
      await tx.quoteVersion.update({
        where: { id },
        data: { status: "superseded", revision: { increment: 1 } },
      });
      work.audit({
        entity: "quote-version",
        entityId: id,
        before: { status, versionNo },
        after: { status: "superseded", by: draft.versionNo },
      });
    }
    const { count } = await tx.quoteVersion.updateMany({
      where: { id: draft.id, revision: draft.revision, status: "draft" },
      data: {
        status: "issued",
        issuedAt: work.now,
        issuedById: work.person.id,
        revision: { increment: 1 },
      },
    });
    if (count === 0) return refuse("stale", { by: await lastEditor(tx, draft.id), points: [] });
    work.audit({ entity: "quote-version", entityId: draft.id, after: { status: "issued" } });
    return ok({ versionId: draft.id, quoteId: draft.quoteId, versionNo: draft.versionNo });
  },
});
