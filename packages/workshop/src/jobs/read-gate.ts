import type { Transaction } from "@buildproof/database";
import { inspectionStands } from "../builds/inspection-limits";
import { dateInZone, isoDateOf } from "../core/site-date";
import { measuredBaseline } from "../engineering/measured-baseline";
import { obligationsOf } from "../paperwork/lay-out-obligations";
import { quoteMoney } from "../quotes/quote-money";
import { kitListOf, selectionOf } from "./accepted-selection";
import { baselinePoint } from "./gate-baseline";
import { inspectionPoint, newestInspection } from "./gate-inspection";
import type { GateJob } from "./gate-job";
import { acceptancePoint, compliancePoint, depositPoint, goodsPoint, resourcesPoint } from "./gate-papers";
import type { GatePoint } from "./gate-point";
import { asksForInspection, type GateCatalogue, prerequisitePoints } from "./gate-prerequisites";

/**
 * Every point of the booking gate of one job, met or not, with overrides shown where a manager recorded one.
 * `startsAt` is when the work would begin: an inspection has to stand on that day, not only today.
 */
export async function readGate(
  tx: Transaction,
  shared: GateCatalogue,
  job: GateJob,
  when: { readonly now: Date; readonly startsAt?: Date },
): Promise<readonly GatePoint[]> {
  const { timeZone } = shared.site;
  const startsOn = dateInZone(when.startsAt ?? when.now, timeZone);
  const inspection = await newestInspection(tx, job.vehicleId);
  const stands = inspection !== null && standsOn(inspection, startsOn, job.vehicle.odometerKm);
  const chosen = selectionOf(job.version.selection);
  const kit = await kitListOf(tx, chosen);
  const asked = await obligationsOf(tx, { id: job.id, itemCodes: chosen.map(({ code }) => code) });
  const money = await quoteMoney(tx, job.quoteId, job.version);
  const baseline = await baselinePoint(tx, job);
  const points = [
    acceptancePoint(job, timeZone),
    depositPoint(money),
    inspectionPoint(inspection, job, startsOn, asksForInspection(shared, job)),
    ...(baseline ? [baseline] : []),
    ...prerequisitePoints(shared, job, {
      inspection: stands,
      baseline: await measuredBaseline(tx, job.vehicleId, timeZone),
    }),
    goodsPoint(job, timeZone, kit.length),
    compliancePoint(job, asked),
    resourcesPoint(job, when.now, timeZone),
  ];
  return withOverrides(points, job, await namesOf(tx, job));
}

function standsOn(
  inspection: NonNullable<Awaited<ReturnType<typeof newestInspection>>>,
  today: string,
  odometerKm: number,
): boolean {
  const { outcome, validToOdometerKm, validUntil } = inspection;
  return inspectionStands(
    { outcome, validToOdometerKm, validUntil: isoDateOf(validUntil) },
    { today, odometerKm },
  );
}

/** A safety point stays open whatever was recorded. */
function withOverrides(
  points: readonly GatePoint[],
  job: GateJob,
  names: ReadonlyMap<string, string>,
): readonly GatePoint[] {
  return points.map((point) => {
    const override = job.overrides.findLast((each) => each.point === point.point);
    if (!override || point.met || point.safety) return point;
    const by = names.get(override.personId) ?? "a manager";
    return { ...point, overridden: { by, reason: override.reason, at: override.at.toISOString() } };
  });
}

async function namesOf(tx: Transaction, job: GateJob): Promise<ReadonlyMap<string, string>> {
  const ids = job.overrides.map(({ personId }) => personId);
  if (ids.length === 0) return new Map();
  const people = await tx.person.findMany({ where: { id: { in: ids } }, select: { id: true, name: true } });
  return new Map(people.map(({ id, name }) => [id, name]));
}
