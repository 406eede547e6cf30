import { z } from "zod";
import { ok } from "../core/result";
import { linkCommand } from "../core/use-case";
import { answerable } from "./answerable";

/** The customer declines the version that the link opens; a reason is welcome and kept with the version. */
export const declineVersion = linkCommand({
  name: "quotes.decline",
  permission: "link:accept",
  input: z.strictObject({
    versionId: z.uuid(),
    reason: z.string().trim().max(1_000, "Keep the reason under 1,000 characters.").default(""),
  }),
  async run(work, { versionId, reason }) {
    const found = await answerable(work, versionId);
    if (!found.ok) return found;
    await work.tx.quoteVersion.update({
      where: { id: found.value.id },
      data: {
        status: "declined",
        declinedAt: work.now,
        declinedBecause: reason,
        revision: { increment: 1 },
      },
    });
    work.audit({
      entity: "quote-version",
      entityId: found.value.id,
      before: { status: "issued" },
      after: { status: "declined", reason },
    });
    return ok({ declinedAt: work.now.toISOString() });
  },
});
