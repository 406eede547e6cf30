import type { Transaction } from "@buildproof/database";

/** A job with everything that the booking gate looks at. */
export function readGateJob(tx: Transaction, jobId: string) {
  return tx.job.findUnique({
    where: { id: jobId },
    include: {
      customer: { select: { id: true, name: true } },
      vehicle: { include: { vehicleModel: true } },
      version: { include: { acceptance: true } },
      quote: { select: { number: true } },
      goodsIn: { orderBy: [{ countedAt: "desc" }, { id: "desc" }], take: 1 },
      overrides: { orderBy: { at: "asc" } },
      obligations: { select: { code: true } },
      bookings: { where: { cancelledAt: null }, include: { resource: true }, orderBy: { startsAt: "asc" } },
    },
  });
}

export type GateJob = NonNullable<Awaited<ReturnType<typeof readGateJob>>>;
