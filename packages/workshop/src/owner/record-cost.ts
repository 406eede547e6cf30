import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone, dayInZone } from "../core/site-date";
import { command } from "../core/use-case";
import { typedAmount } from "../quotes/typed-amount";
import { costKinds } from "./cost-kind";
import { refuseOwner } from "./refuse-owner";

/** What can be recorded: labour is not, it comes from the clock. */
export const recordedKinds = costKinds.filter((kind) => kind !== "labour");

/** Enters what a job cost beside the clock, from a supplier's invoice or the dyno's sheet; a credit note is negative. */
export const recordCost = command({
  name: "owner.record-cost",
  permission: "margins:write",
  input: z.strictObject({
    jobId: z.uuid("Open the job from the margins."),
    kind: z.enum(recordedKinds, "Choose what the cost is for."),
    description: z
      .string()
      .trim()
      .min(3, "Say what it is: the supplier and the invoice number, for example.")
      .max(200, "A description has at most 200 characters."),
    amount: z.string().max(40, "Type an amount."),
    on: z.iso.date("Choose the day on the invoice."),
  }),
  async run({ tx, workshopId, now, audit }, { jobId, kind, description, amount, on }) {
    const job = await tx.job.findUnique({ where: { id: jobId } });
    if (!job) return refuseOwner("job-not-found");
    const { currency, timeZone } = await readSite(tx);
    const amountMinor = signedAmount(amount, currency);
    if (amountMinor === null) return atField("amount", refuseOwner("cost-not-an-amount"));
    if (amountMinor === 0n) return atField("amount", refuseOwner("cost-is-nothing"));
    if (on > dateInZone(now, timeZone)) return atField("on", refuseOwner("cost-in-future"));
    const id = newId();
    const { start } = dayInZone(on, timeZone);
    await tx.jobCost.create({ data: { id, workshopId, jobId, kind, description, amountMinor, at: start } });
    audit({
      entity: "job-cost",
      entityId: id,
      after: { job: job.number, kind, description, amountMinor, on },
    });
    return ok({ id, number: job.number });
  },
});

function signedAmount(typed: string, currency: Parameters<typeof typedAmount>[1]): bigint | null {
  const plain = typed.trim().replace("\u2212", "-");
  if (!plain.startsWith("-")) return typedAmount(plain, currency);
  const amount = typedAmount(plain.slice(1), currency);
  return amount === null ? null : -amount;
}
