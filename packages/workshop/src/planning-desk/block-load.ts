import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { kitListOf, selectionOf } from "../jobs/accepted-selection";
import type { GateJob } from "../jobs/gate-job";
import type { BlockLoad } from "./check-blocks";

const storedFigures = z.object({ kerbMassKg: z.number().positive() });

/** What the job puts on a hoist, and which of its work asks for a skill. */
export async function blockLoadOf(tx: Transaction, job: GateJob, timeZone: string): Promise<BlockLoad> {
  const figures = storedFigures.safeParse(job.vehicle.vehicleModel.figures);
  const kit = await kitListOf(tx, selectionOf(job.version.selection));
  const added = kit.reduce((sum, { massKg, quantity }) => sum + massKg * quantity, 0);
  return {
    timeZone,
    vehicleMassKg: figures.success ? figures.data.kerbMassKg + added : null,
    skillOfWork: new Map((await workOf(tx, job.id)).map(({ name, skill }) => [name, skill])),
  };
}

export type JobWork = {
  readonly code: string;
  readonly name: string;
  readonly hours: number;
  readonly place: string;
  readonly skill: string;
  readonly stage: string;
};

/** The operations on a job's card, in order of work. */
export async function workOf(tx: Transaction, jobId: string): Promise<readonly JobWork[]> {
  const steps = await tx.jobStep.groupBy({ by: ["operationCode"], where: { jobId } });
  const operations = await tx.operation.findMany({
    where: { code: { in: steps.map(({ operationCode }) => operationCode) } },
    orderBy: [{ position: "asc" }, { code: "asc" }],
  });
  return operations.map(({ code, name, hours, place, skill, stage }) => ({
    code,
    name,
    hours: hours.toNumber(),
    place,
    skill,
    stage,
  }));
}
