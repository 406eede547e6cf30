import type { Transaction } from "@buildproof/database";
import { minorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { query } from "../core/use-case";
import { type CostKind, costKinds } from "./cost-kind";
import { type JobFigures, jobFigures } from "./job-figures";
import { operationHours } from "./operation-hours";
import { findPackage, jobsUnder } from "./package-code";
import { ownerPeriod, periodStart } from "./period";
import { recordedCosts } from "./recorded-costs";
import { refuseOwner } from "./refuse-owner";

/** What stands behind one step of a package's waterfall: jobs, operations, what was recorded. */
export const packageStep = query({
  name: "owner.package-step",
  permission: "margins:read",
  input: z.strictObject({ code: z.string().max(100), period: ownerPeriod, kind: z.enum(costKinds) }),
  async run({ tx, now }, { code, period, kind }) {
    const found = await findPackage(tx, code);
    if (!found) return refuseOwner("package-not-found");
    const { timeZone, currency } = await readSite(tx);
    const since = periodStart(period, now, timeZone);
    const jobs = await jobFigures(tx, jobsUnder(code, since));
    const sum = (of: (job: JobFigures) => number) =>
      minorUnits(jobs.reduce((total, job) => total + of(job), 0));
    return ok({
      ...found,
      kind,
      period,
      timeZone,
      currency,
      quotedMinor: sum((job) => job.quotedMinor[kind]),
      actualMinor: sum((job) => job.actualMinor[kind]),
      jobs: jobs
        .map((job) => stepLine(job, kind))
        .filter((line) => line.quotedMinor !== 0 || line.actualMinor !== 0)
        .toSorted((one, other) => other.overMinor - one.overMinor || one.number - other.number),
      operations: await operationsBehind(tx, jobs, kind),
      recorded:
        kind === "labour"
          ? []
          : await recordedCosts(
              tx,
              jobs.map(({ jobId }) => jobId),
              kind,
            ),
    });
  },
});

function stepLine(job: JobFigures, kind: CostKind) {
  const { jobId, number, customerName, plate, handedOverAt } = job;
  const quotedMinor = job.quotedMinor[kind];
  const actualMinor = job.actualMinor[kind];
  const hours =
    kind === "labour"
      ? { quotedHours: job.quotedLabourHours, actualHours: job.clockedHours }
      : kind === "dyno"
        ? { quotedHours: job.quotedDynoHours, actualHours: job.dynoHours }
        : null;
  return {
    jobId,
    number,
    customerName,
    plate,
    handedOverAt,
    quotedMinor,
    actualMinor,
    overMinor: minorUnits(actualMinor - quotedMinor),
    hours,
  };
}

function operationsBehind(tx: Transaction, jobs: readonly JobFigures[], kind: CostKind) {
  // Dyno hours are charged as a whole, so only labour has its hours by operation.
  return kind === "labour"
    ? operationHours(
        tx,
        jobs.map(({ jobId }) => jobId),
        "workshop",
      )
    : Promise.resolve([]);
}
