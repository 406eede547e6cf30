import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import { checkInFacts } from "./check-in-facts";
import { refuse } from "./floor-refusals";
import { clockOf } from "./my-day";
import { readCardSteps } from "./read-card-steps";
import { SIGNING_SKILL } from "./sign-hold-point";
import { standsWhere } from "./stands-where";
import { whatIsNext } from "./what-is-next";
import { isInTheBuilding } from "./working-job";

/** A job card: the vehicle, every step with its state, the faults, who may sign, and the reader's own clock. */
export const readCard = query({
  name: "floor.read-card",
  permission: "jobs:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again from your day.") }),
  async run({ tx, person, now }, { jobId }) {
    const facts = await checkInFacts(tx, jobId, now);
    if (!facts) return refuse("job-not-found");
    const { job } = facts;
    const steps = await readCardSteps(tx, jobId);
    const raised = await tx.fault.findMany({
      where: { jobId },
      orderBy: [{ raisedAt: "desc" }, { id: "desc" }],
    });
    const people = await tx.person.findMany({ orderBy: { name: "asc" } });
    const nameOf = new Map(people.map(({ id, name }) => [id, name]));
    const pack = job.packageCode
      ? await tx.package.findFirst({ where: { code: job.packageCode }, select: { name: true } })
      : null;
    return ok({
      id: job.id,
      number: job.number,
      status: job.status,
      statusWords: jobStatusWords[job.status],
      isHere: isInTheBuilding(job.status),
      readAt: now,
      timeZone: facts.timeZone,
      customer: job.customer.name,
      plate: job.vehicle.plate,
      vin: job.vehicle.vin,
      model: job.vehicle.vehicleModel.name,
      odometerKm: job.vehicle.odometerKm,
      packageName: pack?.name ?? null,
      stands: standsWhere(job.status, job.bookings, now),
      next: whatIsNext(job.status, steps),
      inspection: facts.inspection(job.vehicle.odometerKm),
      steps,
      faults: raised.map(
        ({ id, stepId, sentence, photoSha256, raisedAt, raisedById, clearedAt, clearedBecause }) => ({
          id,
          stepId,
          sentence,
          photoSha256,
          raisedAt,
          by: nameOf.get(raisedById) ?? "",
          clearedAt,
          clearedBecause,
        }),
      ),
      mayWrite: person.roles.some((role) => role === "manager" || role === "technician"),
      isManager: person.roles.includes("manager"),
      reader: { id: person.id, name: person.name },
      signers: people
        .filter(({ active, skills }) => active && skills.includes(SIGNING_SKILL))
        .map(({ id, name, email }) => ({ id, name, email })),
      clock: await clockOf(tx, person.id),
    });
  },
});
