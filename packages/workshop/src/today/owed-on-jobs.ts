import type { Transaction } from "@buildproof/database";
import { dateInZone, daysBetween } from "../core/site-date";
import { clockWords, inDays, type Moment, type Owed, vehicleOf } from "./owed";

/** Faults that wait for a decision, hand-overs that are held up, vehicles ready, jobs not yet booked. */
export async function owedOnJobs(tx: Transaction, moment: Moment): Promise<readonly Owed[]> {
  return [...(await faults(tx, moment)), ...(await held(tx, moment)), ...(await waiting(tx, moment))];
}

const withNames = { customer: true, vehicle: { include: { vehicleModel: true } } } as const;

async function faults(tx: Transaction, { today, site }: Moment): Promise<readonly Owed[]> {
  const rows = await tx.fault.findMany({
    where: { clearedAt: null },
    include: { job: { include: withNames } },
    orderBy: { raisedAt: "asc" },
  });
  return rows.map(({ job, sentence, raisedAt }) => {
    const since = clockWords(raisedAt, site.timeZone, dateInZone(raisedAt, site.timeZone) === today);
    return {
      kind: "fault",
      sentence: `Job ${job.number}, ${vehicleOf(job)}: “${sentence}” waits for a decision since ${since}.`,
      since: raisedAt.toISOString(),
      action: { label: "Decide on the fault", place: "job", id: job.id },
    };
  });
}

async function held(tx: Transaction, { today, site }: Moment): Promise<readonly Owed[]> {
  const rows = await tx.job.findMany({
    where: { status: { in: ["doneNotForRoad", "doneUnpaid", "ready"] } },
    include: { ...withNames, obligations: { include: { _count: { select: { evidence: true } } } } },
    orderBy: { number: "asc" },
  });
  return rows.map((job) => {
    const open = job.obligations.filter(({ _count }) => _count.evidence === 0);
    const finished = job.finishedAt
      ? `, finished ${inDays(daysBetween(today, dateInZone(job.finishedAt, site.timeZone)))}`
      : "";
    const what = `Job ${job.number}, ${vehicleOf(job)}${finished}`;
    const since = (job.finishedAt ?? job.createdAt).toISOString();
    if (job.status === "ready")
      return {
        kind: "ready",
        sentence: `${what}: ready to be collected.`,
        since,
        action: { label: "Hand it over", place: "hand-over", id: job.id },
      };
    if (job.status === "doneUnpaid")
      return {
        kind: "unpaid",
        sentence: `${what}: done, and the balance is not paid.`,
        since,
        action: { label: "Record the balance", place: "quote", id: job.quoteId },
      };
    const names = open.map(({ title }) => title).join("; ");
    return {
      kind: "hand-over-blocked",
      sentence: `${what}: done, not for road use${names === "" ? "" : `, because this is open: ${names}`}.`,
      since,
      action: { label: "Attach the evidence", place: "hand-over", id: job.id },
    };
  });
}

async function waiting(tx: Transaction, { today, site }: Moment): Promise<readonly Owed[]> {
  const rows = await tx.job.findMany({
    where: { status: "waiting" },
    include: withNames,
    orderBy: { createdAt: "asc" },
  });
  return rows.map((job) => {
    const days = daysBetween(today, dateInZone(job.createdAt, site.timeZone));
    return {
      kind: "waiting",
      sentence: `Job ${job.number}, ${vehicleOf(job)}, was accepted ${inDays(days)} and is not booked yet.`,
      since: job.createdAt.toISOString(),
      action: { label: "See what it waits for", place: "gate", id: job.id },
    };
  });
}
