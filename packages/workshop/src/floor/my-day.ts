import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone, dayInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { clockEntries } from "./clock-entries";
import { floorJobs } from "./floor-jobs";
import { refuse } from "./floor-refusals";

/**
 * A person's day on the floor: what is booked for them today in the site's zone, what else is in work, and
 * their clock. A manager may look at anybody's.
 */
export const myDay = query({
  name: "floor.my-day",
  permission: "floor:read",
  input: z.strictObject({ personId: z.uuid("Choose a person from the list.").optional() }),
  async run({ tx, person, now }, { personId = person.id }) {
    const isManager = person.roles.includes("manager");
    if (personId !== person.id && !isManager) return refuse("day-of-another");
    const whose = await tx.person.findUnique({ where: { id: personId }, select: { id: true, name: true } });
    if (!whose) return refuse("person-not-found");
    const { timeZone } = await readSite(tx);
    const today = dateInZone(now, timeZone);
    const { start, end } = dayInZone(today, timeZone);
    const booked = await tx.booking.findMany({
      where: { cancelledAt: null, startsAt: { lt: end }, endsAt: { gt: start }, resource: { personId } },
      orderBy: { startsAt: "asc" },
      select: { jobId: true },
    });
    const bookedIds = [...new Set(booked.map(({ jobId }) => jobId))];
    const jobs = await floorJobs(tx, bookedIds, { now, start, end });
    const mine = bookedIds.flatMap((id) => jobs.find((job) => job.id === id) ?? []);
    return ok({
      now,
      today,
      timeZone,
      person: whose,
      isOwn: personId === person.id,
      people: isManager ? await floorPeople(tx) : [],
      clock: await clockOf(tx, personId),
      clocked: await clockedLately(tx, personId, start, { person, now, timeZone }),
      booked: mine.filter(({ status }) => status !== "handedOver" && status !== "stopped"),
      others: jobs.filter(({ id, isHere }) => isHere && !bookedIds.includes(id)),
    });
  },
});

/** What runs, what touches today, and what began yesterday: where a clock left running overnight is found. */
function clockedLately(
  tx: Transaction,
  personId: string,
  startOfDay: Date,
  reader: Parameters<typeof clockEntries>[2],
) {
  const yesterday = new Date(startOfDay.getTime() - 24 * 3_600_000);
  const lately = [{ startedAt: { gte: yesterday } }, { stoppedAt: { gte: startOfDay } }, { stoppedAt: null }];
  return clockEntries(tx, { personId, OR: lately }, reader);
}

/** Everybody whose time is booked. */
function floorPeople(tx: Transaction) {
  return tx.person.findMany({
    where: { active: true, resources: { some: {} } },
    orderBy: { name: "asc" },
    select: { id: true, name: true },
  });
}

/** The open clock of a person with the job and the operation that it runs on. */
export async function clockOf(tx: Transaction, personId: string) {
  const running = await tx.clockEntry.findFirst({
    where: { personId, stoppedAt: null },
    include: { job: { select: { number: true } } },
  });
  if (!running) return null;
  const { jobId, startedAt, operationCode, job } = running;
  const step = await tx.jobStep.findFirst({
    where: { jobId, operationCode },
    select: { operationName: true },
  });
  return { jobId, number: job.number, startedAt, operationName: step?.operationName ?? null };
}
