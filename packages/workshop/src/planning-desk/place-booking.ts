import { databaseRefusal, type Transaction } from "@buildproof/database";
import { newId } from "../core/new-id";
import { spanWords } from "./time-words";
import type { WorkBlock } from "./work-block";

type Placed = { readonly ok: true; readonly id: string } | { readonly ok: false; readonly sentence: string };

/**
 * Writes one booking. The database decides whether the resource is free; when it refuses, the reader is told
 * who holds the time. The savepoint keeps the rest of the transaction readable after the refusal.
 */
export async function placeBooking(
  tx: Transaction,
  booking: {
    readonly workshopId: string;
    readonly jobId: string;
    readonly block: WorkBlock;
    readonly at: Date;
  },
  timeZone: string,
): Promise<Placed> {
  const { workshopId, jobId, block, at } = booking;
  const { resource, startsAt, endsAt, work } = block;
  const id = newId();
  await tx.$executeRaw`savepoint place_booking`;
  try {
    await tx.booking.create({
      data: { id, workshopId, jobId, resourceId: resource.id, work, startsAt, endsAt, createdAt: at },
    });
  } catch (error) {
    if (databaseRefusal(error)?.constraint !== "no_double_booking") throw error;
    await tx.$executeRaw`rollback to savepoint place_booking`;
    return { ok: false, sentence: await takenSentence(tx, block, timeZone) };
  }
  await tx.$executeRaw`release savepoint place_booking`;
  return { ok: true, id };
}

/** "Hoist 1 is taken Tue 8 Dec, 09:00 to 17:00 by job 1003 (1AB 2CD, blower). Choose …" */
export async function takenSentence(tx: Transaction, block: WorkBlock, timeZone: string): Promise<string> {
  const { resource, startsAt, endsAt } = block;
  const holder = await tx.booking.findFirst({
    where: { resourceId: resource.id, cancelledAt: null, startsAt: { lt: endsAt }, endsAt: { gt: startsAt } },
    orderBy: { startsAt: "asc" },
    include: { job: { include: { vehicle: { select: { plate: true } } } } },
  });
  const next = "Choose another time or another resource.";
  if (!holder) return `${resource.name} was taken for that time a moment ago. ${next}`;
  const span = spanWords(holder.startsAt, holder.endsAt, timeZone);
  return `${resource.name} is taken ${span} by job ${holder.job.number} (${holder.job.vehicle.plate}, ${holder.work}). ${next}`;
}
