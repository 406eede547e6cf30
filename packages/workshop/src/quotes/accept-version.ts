import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { linkCommand } from "../core/use-case";
import { answerable } from "./answerable";
import { jobOfAcceptance } from "./job-of-acceptance";

/**
 * The customer accepts the version that the link opens, by name. Name, time and network address are kept with the
 * sentence that was accepted, and the job is opened in the same transaction.
 */
export const acceptVersion = linkCommand({
  name: "quotes.accept",
  permission: "link:accept",
  input: z.strictObject({
    /** What was on the screen: a link to another version is refused. */
    versionId: z.uuid(),
    name: z
      .string()
      .trim()
      .min(2, "Type your full name to accept.")
      .max(120, "Keep the name under 120 characters."),
    agreed: z.literal(true, "Tick the box to say that you have read the quote and accept it."),
    /** The sentence beside the box, as it was shown. */
    statement: z.string().trim().min(1).max(1_000),
  }),
  async run(work, { versionId, name, statement }) {
    const { tx, workshopId, now, address } = work;
    const found = await answerable(work, versionId);
    if (!found.ok) return found;
    const version = found.value;
    await tx.quoteVersion.update({
      where: { id: version.id },
      data: { status: "accepted", revision: { increment: 1 } },
    });
    await tx.acceptance.create({
      data: { id: newId(), workshopId, versionId: version.id, name, at: now, address, statement },
    });
    work.audit({
      entity: "quote-version",
      entityId: version.id,
      before: { status: "issued" },
      after: { status: "accepted", name, address },
    });
    const job = await jobOfAcceptance(work, version);
    return ok({ acceptedAt: now.toISOString(), jobNumber: job.number });
  },
});
