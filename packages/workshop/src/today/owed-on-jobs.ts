import type { Transaction } from "@buildproof/database";
import { dateInZone, daysBetween } from "../core/site-date";
import { readGateJob } from "../jobs/gate-job";
import { readGateCatalogue } from "../jobs/gate-prerequisites";
import { doneStatuses } from "../jobs/job-status";
import { openPoints } from "../jobs/open-points";
import { readGate } from "../jobs/read-gate";
import { holdsBack } from "../paperwork/obligation-states";
import { readStanding } from "../paperwork/settle-job";
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
    where: { status: { in: [...doneStatuses] } },
    include: withNames,
    orderBy: { number: "asc" },
  });
  const holding = new Map<string, string>();
  for (const { id, status } of rows) {
    if (status !== "doneNotForRoad") continue;
    const standing = await readStanding(tx, id);
    holding.set(id, (standing?.obligations.filter(holdsBack) ?? []).map(({ title }) => title).join("; "));
  }
  return rows.map((job) => {
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
    const names = holding.get(job.id) ?? "";
    return {
      kind: "hand-over-blocked",
      sentence: `${what}: done, not for road use${names === "" ? "" : `, because this is open: ${names}`}.`,
      since,
      action: { label: "Attach the evidence", place: "hand-over", id: job.id },
    };
  });
}

/** The gate of each is read whole, so only the longest waiting are told one by one. */
const MOST_WAITING = 25;

async function waiting(tx: Transaction, { now, today, site }: Moment): Promise<readonly Owed[]> {
  const rows = await tx.job.findMany({
    where: { status: "waiting" },
    include: withNames,
    orderBy: { createdAt: "asc" },
    take: MOST_WAITING,
  });
  if (rows.length === 0) return [];
  const catalogue = await readGateCatalogue(tx);
  const owed: Owed[] = [];
  for (const row of rows) {
    const job = await readGateJob(tx, row.id);
    if (!job) continue;
    const open = openPoints(await readGate(tx, catalogue, job, { now }));
    const days = daysBetween(today, dateInZone(row.createdAt, site.timeZone));
    owed.push({
      kind: "waiting",
      sentence: `Job ${row.number}, ${vehicleOf(row)}, accepted ${inDays(days)}, ${waitsFor(open.length)}.`,
      since: row.createdAt.toISOString(),
      action: {
        label: open.length === 0 ? "Book it" : "See what it waits for",
        place: "gate",
        id: row.id,
      },
    });
  }
  return owed;
}

function waitsFor(points: number): string {
  if (points === 0) return "can be booked: every point of its gate is met";
  return points === 1
    ? "is not booked yet: 1 point of its gate is open"
    : `is not booked yet: ${points} points of its gate are open`;
}
