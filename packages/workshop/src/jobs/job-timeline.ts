import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { jobStatusWords } from "./job-states";
import { type JobStatus, jobStatuses } from "./job-status";

export type TimelineEntry = {
  readonly id: string;
  readonly at: Date;
  readonly who: string;
  readonly sentence: string;
};

const storedTold = z
  .object({
    status: z.enum(jobStatuses),
    number: z.number(),
    goodsIn: z.string(),
    gateOverride: z.string(),
    reason: z.string(),
    booked: z.string(),
    work: z.string(),
    resource: z.string(),
    bookingId: z.string(),
    cancelled: z.string(),
    stoppedBecause: z.string(),
    resumedBecause: z.string(),
    correctedBecause: z.string(),
    evidence: z.string(),
    obligation: z.string(),
    receivedBy: z.string(),
    laidOut: z.number(),
    dyno: z.string(),
    peakKw: z.number(),
    verdict: z.string(),
    sentence: z.string(),
    cleared: z.string(),
    kind: z.string(),
    amountMinor: z.string(),
  })
  .partial();

/** What happened to a job, its faults, its payments and the clocks that were set right, from the audit record, newest first. */
export async function jobTimeline(
  tx: Transaction,
  job: { readonly id: string; readonly quoteId: string },
  words: { readonly money: (minor: bigint) => string },
): Promise<readonly TimelineEntry[]> {
  const faults = await tx.fault.findMany({ where: { jobId: job.id }, select: { id: true } });
  const payments = await tx.payment.findMany({ where: { quoteId: job.quoteId }, select: { id: true } });
  const clocks = await tx.clockEntry.findMany({
    where: { jobId: job.id, correctedAt: { not: null } },
    select: { id: true },
  });
  const events = await tx.auditEvent.findMany({
    where: {
      OR: [
        { entity: "job", entityId: job.id },
        { entity: "fault", entityId: { in: faults.map(({ id }) => id) } },
        { entity: "payment", entityId: { in: payments.map(({ id }) => id) } },
        { useCase: "floor.correct-clock", entity: "clock", entityId: { in: clocks.map(({ id }) => id) } },
      ],
    },
    orderBy: [{ at: "desc" }, { id: "desc" }],
    take: 200,
  });
  return events.map(({ id, at, actorName, useCase, before, after }) => {
    const told = { before: readTold(before), after: readTold(after) };
    return { id, at, who: actorName, sentence: sentenceOf(useCase, told, words.money) };
  });
}

type Told = z.output<typeof storedTold>;

/** What an audit line says that we have words for; anything else leaves the use case's own name. */
function readTold(stored: unknown): Told {
  return storedTold.catch({}).parse(stored ?? {});
}

function sentenceOf(
  useCase: string,
  { before, after }: { readonly before: Told; readonly after: Told },
  money: (minor: bigint) => string,
): string {
  return (
    bookingSentence(before, after) ??
    workSentence(before, after) ??
    dynoSentence(after) ??
    besideSentence(after, money) ??
    `${useCase.replace(".", ": ").replaceAll("-", " ")}.`
  );
}

/** Faults, payments and clocks: they belong to the job and have lines of their own in the record. */
function besideSentence(after: Told, money: (minor: bigint) => string): string | null {
  if (after.cleared) return `Fault settled: ${after.cleared}`;
  if (after.correctedBecause) return `Clock corrected: ${after.correctedBecause}`;
  if (after.sentence) return `Fault raised: ${after.sentence}`;
  if (after.amountMinor && /^\d+$/.test(after.amountMinor))
    return paymentSentence(after, money(BigInt(after.amountMinor)));
  return null;
}

function paymentSentence({ kind, reason }: Told, amount: string): string {
  if (kind === "refund") return `Refunded: ${amount}. ${reason ?? ""}`.trim();
  return `${kind === "balance" ? "Balance" : "Deposit"} received: ${amount}.`;
}

function bookingSentence(before: Told, after: Told): string | null {
  const work = after.work ?? before.work ?? "";
  if (after.booked) return `Booked ${after.booked}: ${work}.`;
  if (after.bookingId && before.bookingId)
    return `Booking moved to ${after.resource ?? "another time"}: ${work}.`;
  if (after.cancelled) return `Booking cancelled: ${before.resource ?? ""}, ${work}.`;
  if (after.gateOverride) return `Gate point “${after.gateOverride}” overridden: ${after.reason ?? ""}`;
  return null;
}

function workSentence(before: Told, after: Told): string | null {
  if (after.status) return `Status: ${words(before.status)}${jobStatusWords[after.status]}.`;
  if (after.goodsIn === "complete") return "Parts counted: complete.";
  if (after.goodsIn) return `Parts counted; missing: ${after.goodsIn}.`;
  if (after.stoppedBecause) return `Stopped: ${after.stoppedBecause}`;
  if (after.resumedBecause) return `Taken up again: ${after.resumedBecause}`;
  if (after.evidence) return `Evidence attached for “${after.obligation ?? ""}”: ${after.evidence}.`;
  if (after.receivedBy) return `Handed over to ${after.receivedBy}.`;
  if (after.laidOut) return `${after.laidOut} obligations laid out.`;
  if (after.number) return `Job ${after.number} opened.`;
  return null;
}

function dynoSentence(after: Told): string | null {
  if (after.verdict) return `Verdict released. ${after.verdict}`;
  if (after.dyno)
    return `Dyno: ${after.dyno} imported, highest ${Math.round(after.peakKw ?? 0)} kW at the hubs.`;
  return null;
}

function words(status: JobStatus | undefined): string {
  return status ? `${jobStatusWords[status]}, then ` : "";
}
