import type { Transaction } from "@buildproof/database";
import { atField } from "../core/at-field";
import { ok, type Result } from "../core/result";
import { jobStatusWords } from "../jobs/job-states";
import type { JobStatus } from "../jobs/job-status";
import { type DynoKind, type DynoSetUp, dynoKinds } from "./dyno-fields";
import { refuse } from "./dyno-refusals";
import { type MeasuredEngine, measuredEngine } from "./measured-engine";

export type Measured = {
  readonly vehicleId: string;
  readonly plate: string;
  readonly buildId: string | null;
  readonly job: { readonly id: string; readonly number: number; readonly status: JobStatus } | null;
  readonly engine: MeasuredEngine;
};

/** The vehicle has not come in yet: only what it makes as it stands can be measured, at its inspection. */
const notYetIn: readonly JobStatus[] = ["waiting", "booked"];
const closed: readonly JobStatus[] = ["handedOver", "stopped"];

/** What may be measured for a job, by where it stands. */
export function kindsFor(status: JobStatus): readonly DynoKind[] {
  if (closed.includes(status)) return [];
  return notYetIn.includes(status) ? ["baseline"] : dynoKinds;
}

/** The vehicle a log is about, its build and job, all of this workshop and belonging together. */
export async function measuredVehicle(
  tx: Transaction,
  { kind, vehicleId, jobId }: Pick<DynoSetUp, "kind" | "vehicleId" | "jobId">,
): Promise<Result<Measured>> {
  const vehicle = await tx.vehicle.findUnique({
    where: { id: vehicleId },
    select: { id: true, plate: true, vehicleModel: { select: { figures: true } } },
  });
  if (!vehicle) return refuse("vehicle-not-found");
  const known = { vehicleId, plate: vehicle.plate, engine: measuredEngine(vehicle.vehicleModel.figures) };
  if (jobId === undefined) {
    if (kind !== "baseline") return atField("kind", refuse("job-missing"));
    const build = await tx.build.findFirst({
      where: { vehicleId },
      orderBy: { createdAt: "desc" },
      select: { id: true },
    });
    return ok({ ...known, buildId: build?.id ?? null, job: null });
  }
  const job = await tx.job.findUnique({
    where: { id: jobId },
    select: { id: true, number: true, status: true, vehicleId: true, buildId: true },
  });
  if (job?.vehicleId !== vehicleId) return refuse("job-not-found");
  if (!kindsFor(job.status).includes(kind))
    return refuse("job-not-here", { status: jobStatusWords[job.status] });
  return ok({ ...known, buildId: job.buildId, job: { id: job.id, number: job.number, status: job.status } });
}
