import type { Transaction } from "@buildproof/database";
import { jobStatusWords } from "../jobs/job-states";
import { nextOpen } from "./card-step";
import { readCards } from "./read-card-steps";
import { standsWhere } from "./stands-where";
import { whatIsNext } from "./what-is-next";
import { isInTheBuilding } from "./working-job";

type Day = { readonly now: Date; readonly start: Date; readonly end: Date };

/** The jobs a floor page shows: those asked for, and every one that is in work. */
export async function floorJobs(tx: Transaction, ids: readonly string[], { now, start, end }: Day) {
  const rows = await tx.job.findMany({
    where: { OR: [{ id: { in: [...ids] } }, { status: { in: ["checkedIn", "inWork", "inProof"] } }] },
    orderBy: { number: "asc" },
    include: {
      vehicle: { include: { vehicleModel: { select: { name: true } } } },
      bookings: { where: { cancelledAt: null }, orderBy: { startsAt: "asc" }, include: { resource: true } },
      faults: { where: { clearedAt: null }, select: { id: true } },
      clockEntries: { where: { stoppedAt: null }, select: { person: { select: { name: true } } } },
    },
  });
  const packages = await tx.package.findMany({ select: { code: true, name: true } });
  const cards = await readCards(
    tx,
    rows.map(({ id }) => id),
  );
  return rows.map((job) => {
    const steps = cards.get(job.id) ?? [];
    return {
      id: job.id,
      number: job.number,
      status: job.status,
      statusWords: jobStatusWords[job.status],
      isHere: isInTheBuilding(job.status),
      plate: job.vehicle.plate,
      model: job.vehicle.vehicleModel.name,
      packageName: packages.find(({ code }) => code === job.packageCode)?.name ?? null,
      stands: standsWhere(job.status, job.bookings, now),
      next: whatIsNext(job.status, steps),
      operation: nextOpen(steps)?.operationName ?? null,
      steps: { all: steps.length, done: steps.filter(({ state }) => state !== "open").length },
      faults: job.faults.length,
      clockedOn: job.clockEntries.map(({ person }) => person.name),
      today: job.bookings
        .filter(({ startsAt, endsAt }) => startsAt < end && endsAt > start)
        .map(({ work, startsAt, endsAt, resource }) => ({
          work,
          startsAt,
          endsAt,
          resource: resource.name,
          personId: resource.personId,
        })),
    };
  });
}
