import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuse } from "./refuse-quote";

/** Closes a customer's link for good. Closing it twice is closing it once. */
export const revokeLink = command({
  name: "quotes.revoke-link",
  permission: "quotes:issue",
  input: z.strictObject({ linkId: z.uuid() }),
  async run(work, { linkId }) {
    const link = await work.tx.customerLink.findUnique({ where: { id: linkId } });
    if (!link) return refuse("link-not-found");
    if (link.revokedAt) return ok({ linkId });
    await work.tx.customerLink.update({ where: { id: linkId }, data: { revokedAt: work.now } });
    work.audit({ entity: "customer-link", entityId: linkId, after: { revokedAt: work.now } });
    return ok({ linkId });
  },
});
