import type { Transaction } from "@buildproof/database";
import type { Correction, DriveSlip } from "@buildproof/engineering";
import { z } from "zod";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { command, type PersonWork } from "../core/use-case";
import { layOutAgain } from "../floor/lay-out-again";
import { mayMove } from "../jobs/job-states";
import { moveJob } from "../jobs/move-job";
import { checkDrive, checkGear } from "./check-drive";
import { correctSetUp } from "./correct-set-up";
import { type DynoSetUp, dynoCodes, gears, setUpFields } from "./dyno-fields";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { DynoUpload } from "./dyno-upload";
import { lockDyno } from "./lock-dyno";
import { type Measured, measuredVehicle } from "./measured-vehicle";
import { runToKeep } from "./run-to-keep";
import { sessionWarnings } from "./session-warnings";

export type ImportedSession = {
  readonly sessionId: string;
  readonly runs: number;
  readonly excluded: number;
  readonly peakKw: number;
  readonly factor: number;
  readonly warnings: readonly string[];
};

/** Keeps a log that was read: file, session and runs together, or nothing of it. */
export const recordDynoSession = command({
  name: "dyno.import",
  permission: "dyno:write",
  input: z.strictObject({
    ...setUpFields,
    upload: z.instanceof(DynoUpload, { error: "Choose the log to import." }),
  }),
  async run(work, { upload, ...setUp }): Promise<Result<ImportedSession>> {
    if (!runsTheDyno(work.person)) return refuse("skill-missing");
    const found = await measuredVehicle(work.tx, setUp);
    if (!found.ok) return found;
    const measured = found.value;
    const gear = checkGear(setUp);
    if (!gear.ok) return gear;
    const corrected = correctSetUp(setUp, measured.engine);
    if (!corrected.ok) return corrected;
    const slips = checkDrive(setUp, upload.runs);
    if (!slips.ok) return slips;
    const earlier = await earlierImports(work.tx, measured.vehicleId, upload.sha256);
    if (earlier.some((each) => each.vehicleId === measured.vehicleId && each.kind === setUp.kind))
      return refuse("already-imported", { kind: setUp.kind, on: measured.plate });
    const warnings = [
      ...earlier.map(
        ({ kind, vehicle }) =>
          `The same file is also kept as the ${kind} of ${vehicle.plate}: check that it belongs here.`,
      ),
      ...sessionWarnings(setUp, corrected.value, upload.runs),
    ];
    const imported = await keepSession(work, setUp, {
      measured,
      correction: corrected.value,
      upload,
      slips: slips.value,
      warnings,
    });
    if (measured.job && setUp.kind === "proof" && mayMove(measured.job.status, "inProof")) {
      const moved = await moveJob(work, measured.job.id, "inProof");
      if (!moved.ok) return moved;
    }
    if (measured.buildId && setUp.kind === "baseline") await layOutAgain(work, measured.buildId);
    // Last, so that a refusal above leaves no file behind.
    await upload.keep();
    return ok(imported);
  },
});

/** Two people with one file at once: the second waits here and then finds it imported. */
async function earlierImports(tx: Transaction, vehicleId: string, sha256: string) {
  await lockDyno(tx, vehicleId);
  return tx.dynoSession.findMany({
    where: { sourceSha256: sha256 },
    select: { vehicleId: true, kind: true, vehicle: { select: { plate: true } } },
    take: 3,
  });
}

type Kept = {
  readonly measured: Measured;
  readonly correction: Correction;
  readonly upload: DynoUpload;
  /** By run, in their order. */
  readonly slips: readonly (DriveSlip | null)[];
  readonly warnings: readonly string[];
};

async function keepSession(
  work: PersonWork,
  setUp: DynoSetUp,
  { measured, correction, upload, slips, warnings }: Kept,
): Promise<ImportedSession> {
  const { tx, workshopId, now } = work;
  const sessionId = newId();
  await keepFileRow(work, upload);
  await tx.dynoSession.create({
    data: {
      id: sessionId,
      workshopId,
      vehicleId: measured.vehicleId,
      buildId: measured.buildId,
      jobId: measured.job?.id ?? null,
      kind: setUp.kind,
      standard: dynoCodes[setUp.code].standard,
      edition: dynoCodes[setUp.code].edition,
      barometerKPa: setUp.barometerKPa,
      airTempC: setUp.airTempC,
      relativeHumidityPct: setUp.relativeHumidityPct,
      aspiration: setUp.aspiration,
      fuelMgPerLPerCycle: setUp.fuelMgPerLPerCycle ?? null,
      boostRatio: setUp.boostRatio ?? null,
      factor: correction.factor,
      factorValid: correction.valid,
      warnings: [...warnings],
      gear: gears[setUp.gear],
      gearRatio: setUp.gearRatio,
      finalDrive: setUp.finalDrive,
      gearboxOilTempC: setUp.gearboxOilTempC,
      rampRpmPerS: setUp.rampRpmPerS,
      smoothingRpm: upload.runs[0]?.smoothingRpm ?? 0,
      operatorId: work.person.id,
      doneAt: now,
      sourceSha256: upload.sha256,
      sourceName: upload.name,
      rowCount: upload.rowCount,
      note: setUp.note,
    },
  });
  const engine = { ...measured.engine, isBoosted: setUp.aspiration !== "natural" };
  const runs = upload.runs.map((run, index) =>
    runToKeep(run, { factor: correction.factor, engine, slip: slips[index] ?? null }),
  );
  await tx.dynoRun.createMany({
    data: runs.map((run) => ({ id: newId(), workshopId, dynoSessionId: sessionId, ...run })),
  });
  const imported = {
    sessionId,
    runs: runs.length,
    excluded: runs.filter(({ excludedBecause }) => excludedBecause !== null).length,
    peakKw: Math.max(...runs.map(({ peakKw }) => peakKw)),
    factor: correction.factor,
    warnings,
  };
  auditImport(work, setUp, measured, { ...imported, file: upload.name, sha256: upload.sha256 });
  return imported;
}

function auditImport(work: PersonWork, { kind }: DynoSetUp, measured: Measured, after: object): void {
  const { job, vehicleId } = measured;
  work.audit({
    ...(job ? { entity: "job", entityId: job.id } : { entity: "vehicle", entityId: vehicleId }),
    after: { dyno: kind, ...after },
  });
}

async function keepFileRow({ tx, workshopId, person, now }: PersonWork, upload: DynoUpload): Promise<void> {
  const { sha256, sizeBytes, name } = upload;
  await tx.storedFile.createMany({
    data: [
      {
        id: newId(),
        workshopId,
        sha256,
        mediaType: "text/csv",
        sizeBytes: BigInt(sizeBytes),
        name,
        uploadedById: person.id,
        at: now,
      },
    ],
    skipDuplicates: true,
  });
}
