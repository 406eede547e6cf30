import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import type { Role } from "../core/actor";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { clockEntries } from "../floor/clock-entries";
import type { ObligationState } from "../paperwork/obligation-states";
import { readStanding } from "../paperwork/settle-job";
import { workOf } from "../planning-desk/block-load";
import { resourceChoices } from "../planning-desk/resource-choices";
import { quoteMoney } from "../quotes/quote-money";
import { kitListOf, selectionOf } from "./accepted-selection";
import { type GateJob, readGateJob } from "./gate-job";
import { moneyWords } from "./gate-papers";
import { readGateCatalogue } from "./gate-prerequisites";
import { refuse } from "./job-refusals";
import { jobStatusWords } from "./job-states";
import { doneStatuses, endedStatuses, type JobStatus, workStatuses } from "./job-status";
import { jobTimeline } from "./job-timeline";
import { readGate } from "./read-gate";
import { ownSteps, progressByOperation, stepStates } from "./step-progress";

/** A job's page: what, who, vehicle, the accepted version, the gate, bookings, steps, faults, money, history. */
export const readJob = query({
  name: "jobs.read",
  permission: "jobs:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx, now, person }, { jobId }) {
    const job = await readGateJob(tx, jobId);
    if (!job) return refuse("job-not-found");
    const shared = await readGateCatalogue(tx);
    const chosen = selectionOf(job.version.selection);
    const steps = await stepStates(tx, jobId);
    const own = ownSteps(steps);
    const { vehicle, version, customer } = job;
    return ok({
      id: job.id,
      number: job.number,
      revision: job.revision,
      status: job.status,
      statusWords: jobStatusWords[job.status],
      stopped: stopOf(job),
      timeZone: shared.site.timeZone,
      now,
      packageName: shared.catalogue.packages.find(({ code }) => code === job.packageCode)?.name ?? null,
      customer,
      vehicle: {
        id: vehicle.id,
        plate: vehicle.plate,
        vin: vehicle.vin,
        model: vehicle.vehicleModel.name,
        odometerKm: vehicle.odometerKm,
      },
      quote: {
        id: job.quoteId,
        number: job.quote.number,
        versionNo: version.versionNo,
        status: version.status,
        goal: version.goal,
        labourHours: version.labourHours.toNumber(),
        dynoHours: version.dynoHours.toNumber(),
        acceptedBy: version.acceptance?.name ?? null,
        acceptedAt: version.acceptance?.at ?? null,
      },
      buildId: job.buildId,
      money: await quoteMoney(tx, job.quoteId, version),
      kit: await kitListOf(tx, chosen),
      goodsIn: await tx.goodsIn.findMany({
        where: { jobId },
        orderBy: [{ countedAt: "desc" }, { id: "desc" }],
      }),
      gate: await readGate(tx, shared, job, { now }),
      bookings: job.bookings.map(({ id, resource, work, startsAt, endsAt }) => ({
        id,
        resourceId: resource.id,
        resource: resource.name,
        kind: resource.kind,
        work,
        startsAt,
        endsAt,
        isOver: endsAt <= now,
      })),
      work: await workOf(tx, jobId),
      progress: progressByOperation(steps),
      steps: { all: own.length, done: own.filter(({ done }) => done).length },
      clock: await clockEntries(tx, { jobId }, { person, now, timeZone: shared.site.timeZone }),
      faults: await tx.fault.findMany({ where: { jobId }, orderBy: { raisedAt: "desc" } }),
      obligations: (await readStanding(tx, jobId))?.obligations.map(obligationLine) ?? [],
      timeline: await jobTimeline(tx, job, { money: (minor) => moneyWords(minor, version.currency) }),
      payments: await paymentsOf(tx, job.quoteId),
      resources: await resourceChoices(tx),
      isOver: endedStatuses.includes(job.status),
      may: mayOn(job.status, person.roles),
    });
  },
});

/** What the page offers this person on a job that stands there. */
function mayOn(status: JobStatus, roles: readonly Role[]) {
  const isOver = endedStatuses.includes(status);
  const isDone = doneStatuses.includes(status);
  const plans = mayDo("bookings:write", roles);
  return {
    book: plans && !isOver,
    stop: plans && !isOver,
    resume: plans && status === "stopped",
    count: mayDo("goods:count", roles) && !isOver && !isDone,
    finish: mayDo("floor:write", roles) && workStatuses.includes(status),
    settleFaults: roles.includes("manager") && !isOver,
    readQuote: mayDo("quotes:read", roles),
  };
}

/** The last stop of a job, also after it was taken up again. */
function stopOf({ stoppedAt, stoppedBecause, resumedAt, resumedBecause }: GateJob) {
  return stoppedAt
    ? {
        at: stoppedAt,
        because: stoppedBecause,
        resumed: resumedAt ? { at: resumedAt, because: resumedBecause } : null,
      }
    : null;
}

function obligationLine({ id, title, standing, sentence }: ObligationState) {
  return { id, title, standing, sentence };
}

async function paymentsOf(tx: Transaction, quoteId: string) {
  const rows = await tx.payment.findMany({
    where: { quoteId },
    orderBy: [{ receivedOn: "asc" }, { recordedAt: "asc" }],
  });
  return rows.map(({ id, kind, amountMinor, method, reason, receivedOn }) => ({
    id,
    kind,
    amountMinor,
    method,
    reason,
    receivedOn: isoDateOf(receivedOn),
  }));
}
