import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { atField } from "../core/at-field";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { command } from "../core/use-case";
import { instantOfLocal } from "../planning-desk/local-time";
import { momentWords } from "../planning-desk/time-words";
import { refuse } from "./floor-refusals";
import { mayCorrectClock } from "./may-correct-clock";

/** Sets the end of a clock entry right. The old end stays in the audit record, the reason with the entry. */
export const correctClock = command({
  name: "floor.correct-clock",
  permission: "floor:write",
  input: z.strictObject({
    entryId: z.uuid("Open the clock entries again and correct from there."),
    /** On the clock of the site: `2026-12-08T16:30`. */
    stoppedAt: z.string().trim().min(1, "Enter when the work really ended."),
    reason: z.string().trim().max(500, "Keep the reason under 500 characters."),
  }),
  async run({ tx, person, now, audit }, { entryId, stoppedAt: typed, reason }) {
    const found = await tx.clockEntry.findUnique({ where: { id: entryId }, select: { personId: true } });
    if (!found) return refuse("clock-entry-not-found");
    // The person's clock is held until the transaction ends, as starting and stopping hold it.
    await tx.$queryRaw`select id from person where id = ${found.personId}::uuid for update`;
    const entry = await tx.clockEntry.findUniqueOrThrow({ where: { id: entryId } });
    const { timeZone } = await readSite(tx);
    if (!mayCorrectClock(entry, person, { now, timeZone })) return refuse("clock-not-yours");
    if (reason.length < 10) return atField("reason", refuse("clock-reason"));
    const read = instantOfLocal(typed, timeZone);
    if (!read.ok) return refuse("clock-not-a-time");
    if (read.at > now) return refuse("clock-in-future");
    if (read.at < entry.startedAt)
      return refuse("clock-before-start", { started: momentWords(entry.startedAt, timeZone) });
    const next = await nextEntry(tx, entry);
    if (next && read.at > next.startedAt)
      return refuse("clock-overlaps", {
        number: next.job.number,
        from: momentWords(next.startedAt, timeZone),
      });
    await tx.clockEntry.update({
      where: { id: entryId },
      data: {
        stoppedAt: read.at,
        correctedAt: now,
        correctedById: person.id,
        correctedBecause: reason,
      },
    });
    audit({
      entity: "clock",
      entityId: entryId,
      before: { stoppedAt: entry.stoppedAt, correctedBecause: entry.correctedBecause },
      after: { job: entry.jobId, stoppedAt: read.at, correctedBecause: reason },
    });
    return ok({ entryId, jobId: entry.jobId, stoppedAt: read.at.toISOString() });
  },
});

/** What the same person began after it. */
function nextEntry(
  tx: Transaction,
  { id, personId, startedAt }: { readonly id: string; readonly personId: string; readonly startedAt: Date },
) {
  return tx.clockEntry.findFirst({
    where: { personId, id: { not: id }, startedAt: { gte: startedAt } },
    orderBy: { startedAt: "asc" },
    include: { job: { select: { number: true } } },
  });
}
