import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { lockQuote } from "./lock-quote";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { startedJobRefusal } from "./started-job";
import { usualValidUntil } from "./valid-until";
import { statusNow } from "./version-status";

/** Copies a version that was issued into a new draft, with a new last day. */
export const makeVersion = command({
  name: "quotes.make-version",
  permission: "quotes:write",
  input: z.strictObject({ versionId: z.uuid() }),
  async run(work, { versionId }) {
    const { tx, workshopId } = work;
    const found = await tx.quoteVersion.findUnique({ where: { id: versionId } });
    if (!found) return refuse("version-not-found");
    await lockQuote(tx, found.quoteId);
    const from = await tx.quoteVersion.findUniqueOrThrow({
      where: { id: versionId },
      include: {
        lines: { orderBy: { position: "asc" } },
        quote: { include: { versions: { orderBy: { versionNo: "desc" } } } },
      },
    });
    const { lines, quote, promise, forecast, selection, ...content } = from;
    const draft = quote.versions.find(({ status }) => status === "draft");
    if (from.status === "draft") return refuse("nothing-to-copy");
    if (draft) return refuse("draft-exists", { versionNo: draft.versionNo });
    const started = await startedJobRefusal(tx, quote.id);
    if (started) return started;

    const site = await quoteSite(tx);
    if (from.status === "issued" && statusNow(from, work.now, site.timeZone) === "lapsed") {
      await tx.quoteVersion.update({
        where: { id: from.id },
        data: { status: "lapsed", revision: { increment: 1 } },
      });
      work.audit({ entity: "quote-version", entityId: from.id, after: { status: "lapsed" } });
    }
    const id = newId();
    const versionNo = (quote.versions[0]?.versionNo ?? 0) + 1;
    await tx.quoteVersion.create({
      data: {
        ...content,
        id,
        versionNo,
        status: "draft",
        validUntil: storedDate(usualValidUntil(work.now, site)),
        issuedAt: null,
        issuedById: null,
        revision: 1,
        createdAt: work.now,
        selection: selection ?? {},
        ...(promise === null ? {} : { promise }),
        ...(forecast === null ? {} : { forecast }),
      },
    });
    await tx.quoteLine.createMany({
      data: lines.map((line) => ({ ...line, id: newId(), versionId: id, workshopId })),
    });
    work.audit({
      entity: "quote-version",
      entityId: id,
      after: { quoteId: quote.id, versionNo, copiedFrom: from.versionNo },
    });
    return ok({ quoteId: quote.id, versionId: id, versionNo });
  },
});
