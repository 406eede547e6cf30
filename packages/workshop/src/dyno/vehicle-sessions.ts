import type { Transaction } from "@buildproof/database";
import type { JobStatus } from "../jobs/job-status";
import { type MeasuredEngine, measuredEngine } from "./measured-engine";
import { readSessions, type SessionRecord } from "./session-record";
import { operatorNames, type SessionView, sessionView, settledSessions } from "./session-view";

/** A session of a vehicle, and the job it was measured for. */
export type VehicleSession = SessionView & {
  readonly jobId: string | null;
  readonly jobNumber: number | null;
};

export type VehicleSessions = {
  readonly engine: MeasuredEngine;
  readonly records: readonly SessionRecord[];
  readonly views: readonly VehicleSession[];
  /** Newest first. */
  readonly jobs: readonly { readonly id: string; readonly number: number; readonly status: JobStatus }[];
};

/** Everything that was ever measured on a vehicle, oldest first, whatever it was for. */
export async function vehicleSessions(
  tx: Transaction,
  vehicle: { readonly id: string; readonly vehicleModel: { readonly figures: unknown } },
): Promise<VehicleSessions> {
  const engine = measuredEngine(vehicle.vehicleModel.figures);
  const records = await readSessions(tx, { vehicleId: vehicle.id });
  const names = await operatorNames(tx, records);
  const context = { engine, names, settled: await settledSessions(tx, records) };
  const jobs = await tx.job.findMany({
    where: { vehicleId: vehicle.id },
    select: { id: true, number: true, status: true },
    orderBy: { number: "desc" },
  });
  const views = records.map((record) => ({
    ...sessionView(record, context),
    jobId: record.jobId,
    jobNumber: jobs.find(({ id }) => id === record.jobId)?.number ?? null,
  }));
  return { engine, records, views, jobs };
}
