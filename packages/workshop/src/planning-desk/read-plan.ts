import type { Transaction } from "@buildproof/database";
import { Temporal } from "temporal-polyfill";
import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { addDays, dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { readGateJob } from "../jobs/gate-job";
import { type GateCatalogue, readGateCatalogue } from "../jobs/gate-prerequisites";
import { openPoints } from "../jobs/open-points";
import { readGate } from "../jobs/read-gate";
import { workOf } from "./block-load";
import { usualHours } from "./closed-hours";
import { resourceChoices } from "./resource-choices";

const isoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, "Choose a day, for example 2026-12-08.");

const WAITING_SHOWN = 40;

/** The plan of a day or a week: every resource with its standing bookings, and the jobs that wait for time. */
export const readPlan = query({
  name: "plan.read",
  permission: "jobs:read",
  input: z.strictObject({ day: isoDate.optional(), span: z.enum(["day", "week"]).default("day") }),
  async run({ tx, now, person }, { day, span }) {
    const shared = await readGateCatalogue(tx);
    const { timeZone } = shared.site;
    const today = dateInZone(now, timeZone);
    const first = span === "week" ? mondayOf(validDay(day) ?? today) : (validDay(day) ?? today);
    const dates = Array.from({ length: span === "week" ? 7 : 1 }, (_, index) => addDays(first, index));
    const days = dates.map((date) => openDay(date, timeZone));
    const from = startOf(first, timeZone);
    const to = startOf(addDays(first, dates.length), timeZone);
    return ok({
      timeZone,
      now,
      today,
      day: first,
      span,
      days,
      resources: await resourcesWithBookings(tx, from, to),
      waiting: await waitingJobs(tx, shared, now),
      choices: await resourceChoices(tx),
      mayBook: mayDo("bookings:write", person.roles),
      waitingTotal: await tx.job.count({ where: { status: "waiting" } }),
    });
  },
});

function validDay(day: string | undefined): string | null {
  if (day === undefined) return null;
  try {
    return Temporal.PlainDate.from(day, { overflow: "reject" }).toString();
  } catch {
    return null;
  }
}

function mondayOf(day: string): string {
  const date = Temporal.PlainDate.from(day);
  return date.subtract({ days: date.dayOfWeek - 1 }).toString();
}

function startOf(day: string, timeZone: string): Date {
  return new Date(Temporal.PlainDate.from(day).toZonedDateTime(timeZone).epochMilliseconds);
}

/** The usual working time of a day, as instants; on a day when the clocks change they are an hour apart. */
function openDay(date: string, timeZone: string) {
  const at = (clock: string) =>
    new Date(Temporal.PlainDateTime.from(`${date}T${clock}`).toZonedDateTime(timeZone).epochMilliseconds);
  return {
    date,
    opens: at(usualHours.opens),
    closes: at(usualHours.closes),
    isClosed: Temporal.PlainDate.from(date).dayOfWeek > usualHours.lastWeekday,
  };
}

async function resourcesWithBookings(tx: Transaction, from: Date, to: Date) {
  const rows = await tx.resource.findMany({
    orderBy: [{ position: "asc" }, { name: "asc" }],
    include: {
      person: { select: { active: true, skills: true } },
      bookings: {
        where: { cancelledAt: null, startsAt: { lt: to }, endsAt: { gt: from } },
        orderBy: { startsAt: "asc" },
        include: { job: { select: { number: true, vehicle: { select: { plate: true } } } } },
      },
    },
  });
  return rows
    .filter(({ person, bookings }) => person?.active !== false || bookings.length > 0)
    .map(({ id, kind, name, maxMassKg, inspectedUntil, person, bookings }) => ({
      id,
      kind,
      name,
      maxMassKg,
      inspectedUntil,
      skills: person?.skills ?? [],
      bookings: bookings.map(({ id: bookingId, jobId, work, startsAt, endsAt, job }) => ({
        id: bookingId,
        jobId,
        jobNumber: job.number,
        plate: job.vehicle.plate,
        work,
        startsAt,
        endsAt,
      })),
    }));
}

async function waitingJobs(tx: Transaction, shared: GateCatalogue, now: Date) {
  const waiting = await tx.job.findMany({
    where: { status: "waiting" },
    orderBy: { number: "asc" },
    take: WAITING_SHOWN,
    select: { id: true },
  });
  const jobs = [];
  for (const { id } of waiting) {
    const job = await readGateJob(tx, id);
    if (!job) continue;
    const points = openPoints(await readGate(tx, shared, job, { now }));
    jobs.push({
      id,
      number: job.number,
      customer: job.customer.name,
      plate: job.vehicle.plate,
      model: job.vehicle.vehicleModel.name,
      goal: job.version.goal,
      labourHours: job.version.labourHours.toNumber(),
      dynoHours: job.version.dynoHours.toNumber(),
      work: await workOf(tx, id),
      points: points.map(({ point, title, sentence, resolve, safety }) => ({
        point,
        title,
        sentence,
        resolve,
        safety,
      })),
    });
  }
  return jobs;
}
