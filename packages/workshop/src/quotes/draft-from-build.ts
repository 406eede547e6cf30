import { z } from "zod";
import { newId } from "../core/new-id";
import { nextNumber } from "../core/next-number";
import { ok } from "../core/result";
import { command, type Work } from "../core/use-case";
import { dateInput } from "./line-input";
import { lockQuote } from "./lock-quote";
import { type QuotableBuild, quotableBuild } from "./quotable-build";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { startedJobRefusal } from "./started-job";
import { usualValidUntil, validUntilRefusal } from "./valid-until";
import { writeDraft } from "./write-draft";

/**
 * A draft quote of a build: version 1, or the next version when the build was quoted before. A draft that is
 * there already is answered as it stands, so that nobody's changes are lost.
 */
export const draftFromBuild = command({
  name: "quotes.draft-from-build",
  permission: "quotes:write",
  input: z.strictObject({ buildId: z.uuid(), validUntil: dateInput.optional() }),
  async run(work, { buildId, validUntil: wanted }) {
    const { tx } = work;
    const site = await quoteSite(tx);
    const validUntil = wanted ?? usualValidUntil(work.now, site);
    const refused = validUntilRefusal(validUntil, work.now, site.timeZone);
    if (refused) return refuse(refused);
    // Two people quoting one build at once: the second finds the first one's draft.
    await tx.$queryRaw`select id from build where id = ${buildId}::uuid for update`;
    const build = await quotableBuild(tx, buildId, work.now);
    if (!build) return refuse("build-not-found");
    if (build.selection.items.length === 0) return refuse("build-empty");
    const earlier = await tx.quote.findFirst({
      where: { buildId },
      orderBy: { number: "desc" },
      include: { versions: { orderBy: { versionNo: "desc" }, take: 1 } },
    });
    const last = earlier?.versions[0];
    if (earlier && last?.status === "draft") {
      const { id: versionId, versionNo } = last;
      return ok({ quoteId: earlier.id, number: earlier.number, versionId, versionNo, isNew: false });
    }
    if (earlier) {
      await lockQuote(tx, earlier.id);
      const started = await startedJobRefusal(tx, earlier.id);
      if (started) return started;
    }
    const { id: quoteId, number } = earlier ?? (await openQuote(work, build));
    const versionNo = (last?.versionNo ?? 0) + 1;
    const versionId = await writeDraft(work, site, build, { quoteId, versionNo, validUntil });
    return ok({ quoteId, number, versionId, versionNo, isNew: true });
  },
});

async function openQuote(work: Work, { id: buildId, customerId, vehicleId }: QuotableBuild) {
  const { tx, workshopId, now } = work;
  const id = newId();
  const number = await nextNumber(tx, workshopId, "quote");
  await tx.quote.create({ data: { id, workshopId, number, buildId, customerId, vehicleId, createdAt: now } });
  work.audit({ entity: "quote", entityId: id, after: { number, buildId } });
  return { id, number };
}
