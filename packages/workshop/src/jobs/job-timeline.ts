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

const told = z
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
    evidence: z.string(),
    obligation: z.string(),
    receivedBy: z.string(),
    laidOut: z.number(),
    dyno: z.string(),
    peakKw: z.number(),
    verdict: z.string(),
  })
  .partial();

/** What happened to a job, from the audit record, newest first. */
export async function jobTimeline(tx: Transaction, jobId: string): Promise<readonly TimelineEntry[]> {
  const events = await tx.auditEvent.findMany({
    where: { entity: "job", entityId: jobId },
    orderBy: [{ at: "desc" }, { id: "desc" }],
    take: 200,
  });
  return events.map(({ id, at, actorName, useCase, before, after }) => ({
    id,
    at,
    who: actorName,
    sentence: sentenceOf(useCase, told.catch({}).parse(before ?? {}), told.catch({}).parse(after ?? {})),
  }));
}

type Told = z.output<typeof told>;

function sentenceOf(useCase: string, before: Told, after: Told): string {
  return (
    bookingSentence(before, after) ??
    workSentence(before, after) ??
    dynoSentence(after) ??
    `${useCase.replace(".", ": ").replaceAll("-", " ")}.`
  );
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
