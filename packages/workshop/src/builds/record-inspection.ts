import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { layOutAgain } from "../floor/lay-out-again";
import { refuseBuild } from "./build-refusals";
import { inspectionReasons, inspectionValidity } from "./inspection-limits";

const percent = (what: string) =>
  z
    .number(`Enter ${what} as a number.`)
    .min(0, `Enter ${what} between 0 and 100 %.`)
    .max(100, `Enter ${what} between 0 and 100 %.`);

/** Records the pre-build inspection. It passes or fails by its readings, and what is written stays. */
export const recordInspection = command({
  name: "builds.record-inspection",
  permission: "inspection:record",
  input: z.strictObject({
    buildId: z.uuid("Open the build again."),
    odometerKm: z
      .number("Enter the odometer in whole kilometres.")
      .int("Enter the odometer in whole kilometres.")
      .min(0, "Enter the odometer in whole kilometres.")
      .max(2_000_000, "Check the odometer: it reads more than 2,000,000 km."),
    leakDownWorstPct: percent("the worst leak-down"),
    leakDownSpreadPct: percent("the leak-down spread"),
    fuelTrimWorstPct: z
      .number("Enter the worst fuel trim as a number.")
      .min(-50, "Enter the worst fuel trim between −50 and 50 %.")
      .max(50, "Enter the worst fuel trim between −50 and 50 %."),
    misfireCodes: z.boolean(),
    coolingSound: z.boolean(),
    note: z.string().trim().max(1_000, "Keep the note to 1,000 characters."),
  }),
  async run(work, { buildId, note, odometerKm, ...readings }) {
    const { tx, workshopId, person, now, audit } = work;
    const build = await tx.build.findUnique({ where: { id: buildId }, include: { vehicle: true } });
    if (!build) return refuseBuild("build-not-found");
    const known = build.vehicle.odometerKm;
    if (odometerKm < known) return atField("odometerKm", refuseBuild("odometer-back", { known }));

    const { timeZone } = await readSite(tx);
    const reasons = inspectionReasons(readings);
    const outcome = reasons.length === 0 ? ("passed" as const) : ("failed" as const);
    const { validUntil, validToOdometerKm } = inspectionValidity(dateInZone(now, timeZone), odometerKm);
    const id = newId();
    await tx.inspection.create({
      data: {
        id,
        workshopId,
        buildId,
        vehicleId: build.vehicleId,
        doneAt: now,
        doneById: person.id,
        odometerKm,
        ...readings,
        outcome,
        reasons: [...reasons],
        note,
        validUntil: storedDate(validUntil),
        validToOdometerKm,
      },
    });
    await tx.vehicle.update({
      where: { id: build.vehicleId },
      data: { odometerKm, revision: { increment: 1 } },
    });
    audit({
      entity: "inspection",
      entityId: id,
      after: { buildId, odometerKm, ...readings, outcome, reasons },
    });
    await layOutAgain(work, buildId);
    return ok({ id, outcome, reasons, validUntil, validToOdometerKm });
  },
});
