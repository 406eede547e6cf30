import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { ok } from "../core/result";
import { dateInZone, dayInZone, storedDate } from "../core/site-date";
import { query } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import type { JobStatus } from "../jobs/job-status";
import { readPromise } from "../quotes/stored-promise";
import { operatorNames } from "./session-view";
import { siteClock } from "./site-clock";

const RECENT = 12;
/** The catalogue's operation that measures a vehicle before anything is ordered. */
const MEASURE_BASELINE = "measure-baseline";

const vehicleWords = { select: { id: true, plate: true, vehicleModel: { select: { name: true } } } } as const;

/** The dyno's own day: what is booked on it, what waits for it, and what it measured last. */
export const showDyno = query({
  name: "dyno.show",
  permission: "dyno:read",
  input: z.strictObject({}),
  async run({ tx, now }) {
    const clock = await siteClock(tx);
    return ok({
      ...clock,
      now,
      bookings: await bookingsOfDay(tx, now, clock.timeZone),
      baselinesWaiting: await waitingForBaseline(tx, now, clock.timeZone),
      proofsWaiting: await waitingForProof(tx),
      sessions: await recentSessions(tx),
    });
  },
});

async function bookingsOfDay(tx: Transaction, now: Date, timeZone: string) {
  const { start, end } = dayInZone(dateInZone(now, timeZone), timeZone);
  const rows = await tx.booking.findMany({
    where: { resource: { kind: "dyno" }, cancelledAt: null, startsAt: { lt: end }, endsAt: { gt: start } },
    select: {
      id: true,
      work: true,
      startsAt: true,
      endsAt: true,
      resource: { select: { name: true } },
      job: { select: { id: true, number: true, vehicle: vehicleWords } },
    },
    orderBy: { startsAt: "asc" },
  });
  return rows.map(({ resource, job, ...booking }) => ({ ...booking, resource: resource.name, job }));
}

const notBegun: readonly JobStatus[] = ["waiting", "booked"];

/** An enquiry without a quote is somebody's still; later it is history. */
const FRESH_DAYS = 60;

/**
 * Builds that ask for a baseline, of vehicles that have none, while somebody still wants them and nobody has
 * taken a spanner to them.
 */
async function waitingForBaseline(tx: Transaction, now: Date, timeZone: string) {
  const today = dateInZone(now, timeZone);
  const rows = await tx.build.findMany({
    where: {
      items: { some: { item: { operations: { has: MEASURE_BASELINE } } } },
      vehicle: { dynoSessions: { none: { kind: "baseline" } } },
      OR: [
        { jobs: { some: { status: { in: [...notBegun] } } } },
        { jobs: { none: {} }, quotes: { some: { versions: { some: stillOpen(today) } } } },
        { jobs: { none: {} }, quotes: { none: {} }, createdAt: { gte: daysBefore(now, FRESH_DAYS) } },
      ],
    },
    select: { id: true, number: true, customer: { select: { name: true } }, vehicle: vehicleWords },
    orderBy: { number: "desc" },
    take: 50,
  });
  const seen = new Set<string>();
  return rows.flatMap(({ customer, ...build }) => {
    if (seen.has(build.vehicle.id)) return [];
    seen.add(build.vehicle.id);
    return [{ ...build, customer: customer.name }];
  });
}

function stillOpen(today: string) {
  return {
    OR: [{ status: "draft" as const }, { status: "issued" as const, validUntil: { gte: storedDate(today) } }],
  };
}

function daysBefore(at: Date, days: number): Date {
  return new Date(at.getTime() - days * 24 * 60 * 60 * 1000);
}

const onTheFloor: readonly JobStatus[] = [
  "checkedIn",
  "inWork",
  "inProof",
  "doneNotForRoad",
  "doneUnpaid",
  "ready",
];

/** Jobs on the floor whose accepted version promises power that nobody has yet said is kept. */
async function waitingForProof(tx: Transaction) {
  const rows = await tx.job.findMany({
    where: { status: { in: [...onTheFloor] }, verdicts: { none: {} } },
    select: {
      id: true,
      number: true,
      status: true,
      vehicle: vehicleWords,
      version: { select: { promise: true } },
      dynoSessions: { where: { kind: "proof" }, select: { id: true }, take: 1 },
    },
    orderBy: { number: "asc" },
  });
  return rows.flatMap(({ version, dynoSessions, status, ...job }) => {
    const promise = readPromise(version.promise);
    if (!promise) return [];
    const { lowKw, highKw } = promise;
    return [
      { ...job, statusWords: jobStatusWords[status], lowKw, highKw, isMeasured: dynoSessions.length > 0 },
    ];
  });
}

async function recentSessions(tx: Transaction) {
  const rows = await tx.dynoSession.findMany({
    select: {
      id: true,
      kind: true,
      doneAt: true,
      factor: true,
      factorValid: true,
      warnings: true,
      operatorId: true,
      vehicle: vehicleWords,
      job: { select: { id: true, number: true } },
      runs: { select: { peakKw: true, peakNm: true, excludedBecause: true } },
    },
    orderBy: [{ doneAt: "desc" }, { id: "desc" }],
    take: RECENT,
  });
  const names = await operatorNames(tx, rows);
  return rows.map(({ runs, operatorId, warnings, ...session }) => {
    const counted = runs.filter(({ excludedBecause }) => excludedBecause === null);
    return {
      ...session,
      operator: names.get(operatorId ?? "") ?? "not recorded",
      warnings: warnings.length,
      runs: runs.length,
      counted: counted.length,
      peakKw: meanOf(counted.map(({ peakKw }) => peakKw)),
      peakNm: meanOf(counted.map(({ peakNm }) => peakNm)),
    };
  });
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}
