import { z } from "zod";
import { newId } from "../core/new-id";
import { mayDo } from "../core/permissions";
import { ok, type Result } from "../core/result";
import { command, type PersonWork } from "../core/use-case";
import { type GateJob, readGateJob } from "../jobs/gate-job";
import type { GatePoint } from "../jobs/gate-point";
import { readGateCatalogue } from "../jobs/gate-prerequisites";
import { refuse as refuseJob } from "../jobs/job-refusals";
import { jobStatusWords } from "../jobs/job-states";
import { endedStatuses } from "../jobs/job-status";
import { moveJob } from "../jobs/move-job";
import { openPoints } from "../jobs/open-points";
import { readGate } from "../jobs/read-gate";
import { blockLoadOf } from "./block-load";
import { refuse } from "./booking-refusals";
import { blockPoints } from "./check-blocks";
import { closedHoursWarnings } from "./closed-hours";
import { dynoAloneSentence, dynoWithoutOperator } from "./dyno-operator";
import { heldByOthers, jobBlocks } from "./job-blocks";
import { placeBooking, takenSentence } from "./place-booking";
import { readBlocks } from "./read-blocks";
import { type WorkBlock, workBlockInput } from "./work-block";

const SHORTEST_REASON = 10;

const bookInput = z.strictObject({
  jobId: z.uuid("Open the job again and book from there."),
  blocks: z.array(workBlockInput).max(20, "Book at most 20 blocks at once."),
  /** Points that the manager lets pass, each with the reason that is recorded. */
  overrides: z.array(z.strictObject({ point: z.string(), reason: z.string().trim().max(1_000) })).default([]),
});

type Override = z.output<typeof bookInput>["overrides"][number];

/**
 * Books several work blocks of a job at once, or none. A refusal lists every unmet point: of the gate, and
 * of the times themselves.
 */
export const bookJob = command({
  name: "jobs.book",
  permission: "bookings:write",
  input: bookInput,
  async run(work, { jobId, blocks: typed, overrides }) {
    const { tx, now } = work;
    const job = await readGateJob(tx, jobId);
    if (!job) return refuseJob("job-not-found");
    if (endedStatuses.includes(job.status))
      return refuseJob("job-not-bookable", { status: jobStatusWords[job.status] });
    if (typed.length === 0) return refuse("no-blocks");
    const shared = await readGateCatalogue(tx);
    const { timeZone } = shared.site;
    const read = await readBlocks(tx, typed, { now, timeZone });
    const startsAt = earliest(read.blocks);
    const gate = await readGate(tx, shared, job, { now, ...(startsAt ? { startsAt } : {}) });
    const open = openPoints(gate);
    const overridden = checkOverrides(work, open, overrides);
    if (!overridden.ok) return overridden;
    const shut = open.filter(({ point }) => !overrides.some((override) => override.point === point));
    const points = [
      ...shut.map(pointSentence),
      ...read.points,
      ...(await timePoints(work, job, read.blocks, timeZone)),
    ];
    if (points.length > 0) return refuseJob("gate-shut", { points });
    await recordOverrides(work, jobId, overrides);
    const placed = await placeAll(work, jobId, read.blocks, timeZone);
    if (!placed.ok) return placed;
    if (job.status === "waiting") {
      const moved = await moveJob(work, jobId, "booked");
      if (!moved.ok) return moved;
    }
    return ok({
      jobId,
      bookingIds: placed.value,
      warnings: closedHoursWarnings(read.blocks, timeZone),
    });
  },
});

function pointSentence({ sentence, resolve, safety }: GatePoint): string {
  return [sentence, resolve, safety ? "This point keeps people from harm and is never overridden." : ""]
    .filter(Boolean)
    .join(" ");
}

function earliest(blocks: readonly WorkBlock[]): Date | null {
  const [first] = [...blocks].sort((a, b) => a.startsAt.getTime() - b.startsAt.getTime());
  return first?.startsAt ?? null;
}

/** An override names an open point that may be overridden, and says why. */
function checkOverrides(
  { person }: PersonWork,
  open: readonly GatePoint[],
  overrides: readonly Override[],
): Result<null> {
  for (const { point, reason } of overrides) {
    const found = open.find((each) => each.point === point);
    if (!found) return refuseJob("override-unknown", { point });
    const { title } = found;
    if (found.safety || !mayDo("gate:override", person.roles))
      return refuseJob("override-is-safety", { title });
    if (reason.length < SHORTEST_REASON) return refuseJob("override-needs-reason", { title });
  }
  return ok(null);
}

async function timePoints(
  { tx, now }: PersonWork,
  job: GateJob,
  blocks: readonly WorkBlock[],
  timeZone: string,
): Promise<readonly string[]> {
  const load = await blockLoadOf(tx, job, timeZone);
  const kept = await jobBlocks(tx, job.id, now);
  const alone = dynoWithoutOperator([...kept, ...blocks]).filter((block) =>
    blocks.some((fresh) => fresh === block),
  );
  return [
    ...blockPoints(blocks, load),
    ...alone.map((block) => dynoAloneSentence(block, timeZone)),
    ...(await heldByOthers(tx, blocks, (block) => takenSentence(tx, block, timeZone))),
  ];
}

async function recordOverrides(
  { tx, workshopId, person, now, audit }: PersonWork,
  jobId: string,
  overrides: readonly Override[],
): Promise<void> {
  for (const { point, reason } of overrides) {
    await tx.gateOverride.create({
      data: { id: newId(), workshopId, jobId, point, reason, personId: person.id, at: now },
    });
    audit({ entity: "job", entityId: jobId, after: { gateOverride: point, reason } });
  }
}

async function placeAll(
  { tx, workshopId, now, audit }: PersonWork,
  jobId: string,
  blocks: readonly WorkBlock[],
  timeZone: string,
): Promise<Result<readonly string[]>> {
  const ids: string[] = [];
  // One order for everybody, so that two people booking the same resources do not wait for each other.
  const ordered = [...blocks].sort((a, b) => a.resource.id.localeCompare(b.resource.id));
  for (const block of ordered) {
    const placed = await placeBooking(tx, { workshopId, jobId, block, at: now }, timeZone);
    if (!placed.ok) return refuse("double-booked", { sentence: placed.sentence });
    ids.push(placed.id);
    const { resource, startsAt, endsAt, work } = block;
    audit({
      entity: "job",
      entityId: jobId,
      after: { booked: resource.name, startsAt, endsAt, work, bookingId: placed.id },
    });
  }
  return ok(ids);
}
