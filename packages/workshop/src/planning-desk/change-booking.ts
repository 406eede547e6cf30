import { z } from "zod";
import { ok, type Result } from "../core/result";
import { readSite } from "../core/site";
import { command, type PersonWork } from "../core/use-case";
import { readGateJob } from "../jobs/gate-job";
import { refuse as refuseJob } from "../jobs/job-refusals";
import { moveJob } from "../jobs/move-job";
import { blockLoadOf } from "./block-load";
import { refuse } from "./booking-refusals";
import { blockPoints } from "./check-blocks";
import { closedHoursWarnings } from "./closed-hours";
import { dynoAloneSentence, dynoWithoutOperator } from "./dyno-operator";
import { heldByOthers, jobBlocks } from "./job-blocks";
import { placeBooking, takenSentence } from "./place-booking";
import { readBlocks } from "./read-blocks";
import { type WorkBlock, workBlockInput } from "./work-block";

const bookingId = z.uuid("Open the plan again and choose the booking.");

/** Moves a booking to another time or resource. The old one stays on record as cancelled, the new one is its own. */
export const moveBooking = command({
  name: "jobs.move-booking",
  permission: "bookings:write",
  input: workBlockInput.extend({ bookingId }),
  async run(work, { bookingId: id, ...typed }) {
    const { tx, now, workshopId, audit } = work;
    const freed = await free(work, id);
    if (!freed.ok) return freed;
    const { jobId } = freed.value;
    const job = await readGateJob(tx, jobId);
    if (!job) return refuseJob("job-not-found");
    const { timeZone } = await readSite(tx);
    const { blocks, points } = await readBlocks(tx, [typed], { now, timeZone });
    const [block] = blocks;
    const wrong = [
      ...points,
      ...blockPoints(blocks, await blockLoadOf(tx, job, timeZone)),
      ...(await heldByOthers(tx, blocks, (each) => takenSentence(tx, each, timeZone))),
      ...(await leftAlone(work, freed.value, blocks, timeZone)),
    ];
    if (wrong.length > 0 || !block) return refuse("times-not-right", { points: wrong });
    const placed = await placeBooking(tx, { workshopId, jobId, block, at: now }, timeZone);
    if (!placed.ok) return refuse("double-booked", { sentence: placed.sentence });
    audit({
      entity: "job",
      entityId: jobId,
      before: { bookingId: id, ...spanOf(freed.value.block) },
      after: { bookingId: placed.id, ...spanOf(block) },
    });
    return ok({ jobId, bookingId: placed.id, warnings: closedHoursWarnings(blocks, timeZone) });
  },
});

/** Cancels a booking. A job whose last time is gone waits again. */
export const cancelBooking = command({
  name: "jobs.cancel-booking",
  permission: "bookings:write",
  input: z.strictObject({ bookingId }),
  async run(work, { bookingId: id }) {
    const { tx, audit } = work;
    const freed = await free(work, id);
    if (!freed.ok) return freed;
    const { jobId, block, status } = freed.value;
    const { timeZone } = await readSite(tx);
    const alone = await leftAlone(work, freed.value, [], timeZone);
    if (alone.length > 0) return refuse("dyno-left-alone", { points: alone });
    audit({
      entity: "job",
      entityId: jobId,
      before: { bookingId: id, ...spanOf(block) },
      after: { cancelled: id },
    });
    const left = await tx.booking.count({ where: { jobId, cancelledAt: null } });
    if (left === 0 && status === "booked") {
      const moved = await moveJob(work, jobId, "waiting");
      if (!moved.ok) return moved;
    }
    return ok({ jobId, bookingId: id });
  },
});

type Freed = { readonly jobId: string; readonly status: string; readonly block: WorkBlock };

/** Takes the booking off the plan, if nobody else did so first. */
async function free({ tx, now }: PersonWork, id: string): Promise<Result<Freed>> {
  const booking = await tx.booking.findUnique({
    where: { id },
    include: {
      job: { select: { status: true } },
      resource: { include: { person: { select: { active: true, skills: true } } } },
    },
  });
  if (!booking) return refuseJob("booking-not-found");
  if (booking.endsAt <= now) return refuse("booking-past");
  const { count } = await tx.booking.updateMany({
    where: { id, cancelledAt: null },
    data: { cancelledAt: now },
  });
  if (count === 0) return refuseJob("booking-stale");
  const { resource, startsAt, endsAt, work, jobId, job } = booking;
  return ok({ jobId, status: job.status, block: { resource, startsAt, endsAt, work } });
}

/** Dyno time that had its operator before the change and has none after it. */
async function leftAlone(
  { tx, now }: PersonWork,
  { jobId, block }: Freed,
  added: readonly WorkBlock[],
  timeZone: string,
): Promise<readonly string[]> {
  const kept = await jobBlocks(tx, jobId, now);
  const before = dynoWithoutOperator([...kept, block]);
  return dynoWithoutOperator([...kept, ...added])
    .filter((alone) => !before.includes(alone))
    .map((alone) => dynoAloneSentence(alone, timeZone));
}

function spanOf({ resource, startsAt, endsAt, work }: WorkBlock) {
  return { resource: resource.name, startsAt, endsAt, work };
}
