import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { command, type PersonWork } from "../core/use-case";
import { momentWords } from "../planning-desk/time-words";
import { nextOpen } from "./card-step";
import { doneAt } from "./enter-step";
import { refuse } from "./floor-refusals";
import { readCardSteps } from "./read-card-steps";
import { deviceTime } from "./record-step";
import { workingJob } from "./working-job";

/** Starts the acting person's clock on a job. A clock that runs on another job is switched only when asked. */
export const startClock = command({
  name: "floor.start-clock",
  permission: "floor:write",
  input: z.strictObject({
    jobId: z.uuid("Open the card again."),
    at: deviceTime.optional(),
    /** Stops the clock that runs on another job. */
    switches: z.boolean().optional(),
  }),
  async run(work, { jobId, at, switches = false }) {
    const job = await workingJob(work, jobId);
    if (!job.ok) return job;
    const running = await runningClock(work);
    const startedAt = doneAt(at, work.now);
    if (running?.jobId === jobId) return ok({ jobId, startedAt: running.startedAt.toISOString() });
    if (running && !switches) {
      const { timeZone } = await readSite(work.tx);
      const since = momentWords(running.startedAt, timeZone);
      return refuse("already-clocked", { number: running.job.number, since });
    }
    if (running) await stop(work, running, startedAt);
    const steps = await readCardSteps(work.tx, jobId);
    const operation = (nextOpen(steps) ?? steps.at(-1))?.operationCode ?? "work";
    const { tx, workshopId, person } = work;
    const id = newId();
    await tx.clockEntry.create({
      data: { id, workshopId, jobId, personId: person.id, operationCode: operation, startedAt },
    });
    work.audit({ entity: "clock", entityId: id, after: { job: jobId, startedAt } });
    return ok({ jobId, startedAt: startedAt.toISOString() });
  },
});

/** Stops the acting person's clock, whatever job it runs on. */
export const stopClock = command({
  name: "floor.stop-clock",
  permission: "floor:write",
  input: z.strictObject({ at: deviceTime.optional() }),
  async run(work, { at }) {
    const running = await runningClock(work);
    if (!running) return refuse("clock-not-running");
    const stoppedAt = await stop(work, running, doneAt(at, work.now));
    return ok({ jobId: running.jobId, stoppedAt: stoppedAt.toISOString() });
  },
});

type Running = NonNullable<Awaited<ReturnType<typeof runningClock>>>;

/** The acting person's open clock entry, held until the transaction ends. */
async function runningClock({ tx, person }: PersonWork) {
  await tx.$queryRaw`select id from person where id = ${person.id}::uuid for update`;
  return tx.clockEntry.findFirst({
    where: { personId: person.id, stoppedAt: null },
    include: { job: { select: { number: true } } },
  });
}

async function stop(work: PersonWork, running: Running, at: Date): Promise<Date> {
  const stoppedAt = at < running.startedAt ? running.startedAt : at;
  await work.tx.clockEntry.update({ where: { id: running.id }, data: { stoppedAt } });
  work.audit({ entity: "clock", entityId: running.id, after: { job: running.jobId, stoppedAt } });
  return stoppedAt;
}
