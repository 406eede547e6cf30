import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { addDays, dayInZone, isoDateOf } from "../core/site-date";
import { command } from "../core/use-case";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";
import { statusNow } from "./version-status";

/** A link still opens for so long after its quote lapsed, to read what it said. */
const DAYS_AFTER_LAPSE = 14;

/**
 * Makes a link for the customer to one version. The token itself is made by the caller and shown once: it reaches
 * neither the database nor a stored reply, only its hash does.
 */
export const makeLink = command({
  name: "quotes.make-link",
  permission: "quotes:issue",
  input: z.strictObject({ versionId: z.uuid(), tokenHash: z.string().regex(/^[0-9a-f]{64}$/) }),
  async run(work, { versionId, tokenHash }) {
    const { tx, workshopId } = work;
    const version = await tx.quoteVersion.findUnique({ where: { id: versionId } });
    if (!version) return refuse("version-not-found");
    const site = await quoteSite(tx);
    const status = statusNow(version, work.now, site.timeZone);
    const { versionNo } = version;
    if (status !== "issued" && status !== "accepted") return refuse("not-issued", { versionNo, status });
    const id = newId();
    const lastDay = addDays(isoDateOf(version.validUntil), DAYS_AFTER_LAPSE);
    const expiresAt = dayInZone(lastDay, site.timeZone).end;
    if (expiresAt <= work.now) return refuse("not-issued", { versionNo, status: `${status}, too long ago` });
    await tx.customerLink.create({
      data: {
        id,
        workshopId,
        versionId,
        tokenHash,
        expiresAt,
        createdAt: work.now,
        createdById: work.person.id,
      },
    });
    work.audit({ entity: "customer-link", entityId: id, after: { versionId, expiresAt } });
    return ok({ linkId: id, expiresAt: expiresAt.toISOString() });
  },
});
