import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { query } from "../core/use-case";
import { jobStatusWords } from "./job-states";
import { doneStatuses, endedStatuses, type JobStatus, jobStatuses, workStatuses } from "./job-status";

/** Which jobs a list shows, in the words that people ask in. */
export const jobViews = {
  current: jobStatuses.filter((status) => !endedStatuses.includes(status)),
  waiting: ["waiting"],
  booked: ["booked"],
  "in-work": workStatuses,
  done: doneStatuses,
  "handed-over": ["handedOver"],
  stopped: ["stopped"],
  all: jobStatuses,
} as const satisfies Readonly<Record<string, readonly JobStatus[]>>;

export type JobView = keyof typeof jobViews;

const views = Object.keys(jobViews) as [JobView, ...JobView[]]; // Object.keys forgets that it knew the names.

const PAGE = 50;

/** Jobs by status in words, newest first, found by number, plate, customer or package. */
export const listJobs = query({
  name: "jobs.list",
  permission: "jobs:read",
  input: z.strictObject({
    view: z.enum(views, "Choose one of the lists.").default("current"),
    search: z.string().trim().max(100, "Search with fewer than 100 characters.").default(""),
    page: z.number().int().min(1).default(1),
  }),
  async run({ tx }, { view, search, page }) {
    const { timeZone } = await readSite(tx);
    const where = { status: { in: [...jobViews[view]] }, ...matching(search) };
    const [total, rows] = [await tx.job.count({ where }), await readRows(tx, where, page)];
    return ok({
      timeZone,
      total,
      page,
      pages: Math.max(1, Math.ceil(total / PAGE)),
      jobs: rows.map(({ bookings, quote, version, customer, vehicle, ...job }) => ({
        id: job.id,
        number: job.number,
        status: job.status,
        statusWords: jobStatusWords[job.status],
        customer: customer.name,
        plate: vehicle.plate,
        model: vehicle.vehicleModel.name,
        packageCode: job.packageCode,
        quoteNumber: quote.number,
        versionNo: version.versionNo,
        goal: version.goal,
        next: bookings[0]
          ? { startsAt: bookings[0].startsAt, resource: bookings[0].resource.name, work: bookings[0].work }
          : null,
        openFaults: job._count.faults,
        /** Why it is stopped; empty where it is not. */
        stoppedBecause: job.status === "stopped" ? job.stoppedBecause : "",
        createdAt: job.createdAt,
      })),
    });
  },
});

type Where = NonNullable<NonNullable<Parameters<Transaction["job"]["findMany"]>[0]>["where"]>;

function readRows(tx: Transaction, where: Where, page: number) {
  return tx.job.findMany({
    where,
    orderBy: { number: "desc" },
    skip: (page - 1) * PAGE,
    take: PAGE,
    include: {
      customer: { select: { name: true } },
      vehicle: { select: { plate: true, vehicleModel: { select: { name: true } } } },
      quote: { select: { number: true } },
      version: { select: { versionNo: true, goal: true } },
      bookings: {
        where: { cancelledAt: null },
        orderBy: { startsAt: "asc" },
        take: 1,
        include: { resource: { select: { name: true } } },
      },
      _count: { select: { faults: { where: { clearedAt: null } } } },
    },
  });
}

function matching(search: string): Where {
  if (search === "") return {};
  const has = { contains: search, mode: "insensitive" } as const;
  const number = /^\d{1,9}$/.test(search) ? [{ number: Number(search) }] : [];
  return {
    OR: [
      ...number,
      { customer: { name: has } },
      { vehicle: { plate: has } },
      { vehicle: { vin: has } },
      { packageCode: has },
      { version: { goal: has } },
    ],
  };
}
