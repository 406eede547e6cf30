import type { Transaction } from "@buildproof/database";
import { dayInZone } from "../core/site-date";
import { clockWords, type Moment } from "./owed";

export type Visit = {
  readonly jobId: string;
  readonly number: number;
  readonly owner: string;
  readonly phone: string;
  readonly plate: string;
  readonly model: string;
  /** On the clock of the site. */
  readonly at: string;
};

const withNames = { customer: true, vehicle: { include: { vehicleModel: true } } } as const;

/** Vehicles whose first booking begins today. */
export function arrivalsToday(tx: Transaction, moment: Moment): Promise<readonly Visit[]> {
  return visits(tx, moment, "first");
}

/** Vehicles whose last booking ends today. */
export function collectionsToday(tx: Transaction, moment: Moment): Promise<readonly Visit[]> {
  return visits(tx, moment, "last");
}

async function visits(
  tx: Transaction,
  { today, site }: Moment,
  which: "first" | "last",
): Promise<readonly Visit[]> {
  const { start, end } = dayInZone(today, site.timeZone);
  const isToday = (at: Date) => at >= start && at < end;
  const jobs = await tx.job.findMany({
    where: {
      status: { notIn: ["handedOver", "stopped"] },
      bookings: { some: { cancelledAt: null, startsAt: { lt: end }, endsAt: { gt: start } } },
    },
    include: { ...withNames, bookings: { where: { cancelledAt: null }, orderBy: { startsAt: "asc" } } },
  });
  return jobs
    .flatMap((job) => {
      const at =
        which === "first"
          ? job.bookings[0]?.startsAt
          : job.bookings.map(({ endsAt }) => endsAt).toSorted((a, b) => b.getTime() - a.getTime())[0];
      return at && isToday(at) ? [{ job, at }] : [];
    })
    .toSorted((a, b) => a.at.getTime() - b.at.getTime())
    .map(({ job, at }) => ({
      jobId: job.id,
      number: job.number,
      owner: job.customer.name,
      phone: job.customer.phone,
      plate: job.vehicle.plate,
      model: job.vehicle.vehicleModel.name,
      at: clockWords(at, site.timeZone, true),
    }));
}
