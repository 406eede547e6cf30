import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { acceptedJob } from "../testing/accepted-job";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { floorCard } from "../testing/floor-card";
import { startClock, stopClock } from "./clock";
import { recordStep } from "./record-step";

const trial = demoWorkshop();
const minutes = (count: number) => new Date(demoNow.getTime() + count * 60_000);
let jobId = "";
let otherId = "";
const { read, stepOf } = floorCard(trial, () => jobId);

beforeAll(() => trial.sql("delete from clock_entry where stopped_at is null"));

beforeEach(async () => {
  jobId = await arrived();
  otherId = await arrived();
  await trial.sql("delete from clock_entry");
});

async function arrived(): Promise<string> {
  const job = await acceptedJob(trial, { items: ["hp-pump-upgrade", "oil-service"] });
  await trial.sql("update job set status = 'checked_in' where id = $1", [job.jobId]);
  return job.jobId;
}

const entries = () =>
  trial.sql("select job_id, operation_code, started_at, stopped_at from clock_entry order by started_at");

describe("the clock", () => {
  test("starts and stops with one press each", async () => {
    await trial.done("technician", startClock, { jobId });
    expect((await read()).clock).toMatchObject({ jobId, startedAt: demoNow });
    await trial.done("technician", stopClock, {}, minutes(30));
    expect((await read()).clock).toBeNull();
    expect(await entries()).toMatchObject([{ started_at: demoNow, stopped_at: minutes(30) }]);
  });

  test("started twice runs once", async () => {
    await trial.done("technician", startClock, { jobId });
    await trial.done("technician", startClock, { jobId }, minutes(1));
    expect(await entries()).toHaveLength(1);
  });

  test("asks before it is switched from another job, and leaves no gap when it is", async () => {
    await trial.done("technician", startClock, { jobId: otherId });
    const refusal = await trial.refused("technician", startClock, { jobId }, minutes(20));
    expect(refusal).toMatchObject({ code: "already-clocked" });
    expect(refusal.sentence).toMatch(/since Wed 25 Nov, 09:00/);
    await trial.done("technician", startClock, { jobId, switches: true }, minutes(20));
    expect(await entries()).toMatchObject([
      { job_id: otherId, stopped_at: minutes(20) },
      { job_id: jobId, started_at: minutes(20), stopped_at: null },
    ]);
  });

  test("a second open clock of one person is refused by the database itself", async () => {
    await trial.done("technician", startClock, { jobId });
    const copy = `insert into clock_entry (id, workshop_id, job_id, person_id, operation_code, started_at)
      select gen_random_uuid(), workshop_id, job_id, person_id, 'x', started_at from clock_entry`;
    await expect(trial.sql(copy)).rejects.toThrow(/one_clock_per_person/);
  });

  test("two devices that start it at once start one clock", async () => {
    await Promise.all([
      trial.done("technician", startClock, { jobId }),
      trial.done("technician", startClock, { jobId }),
    ]);
    expect(await entries()).toHaveLength(1);
  });

  test("that is not running is not stopped", async () => {
    expect((await trial.refused("technician", stopClock, {})).code).toBe("clock-not-running");
  });

  test("does not start on a job whose vehicle is not here, nor on one of another workshop", async () => {
    await trial.sql("update job set status = 'booked' where id = $1", [jobId]);
    expect((await trial.refused("technician", startClock, { jobId })).code).toBe("not-in-the-building");
    await trial.sql("update person set roles = '{manager}' where email = 'samir@gulfboost.example'");
    expect((await trial.refused("gulfOwner", startClock, { jobId })).code).toBe("job-not-found");
  });

  test("follows the card from one operation to the next", async () => {
    const steps = (await read()).steps;
    const first = steps.find(({ kind }) => kind === "tick");
    const second = steps.find(
      ({ kind, operationCode }) => kind === "tick" && operationCode !== first?.operationCode,
    );
    await trial.done("technician", startClock, { jobId });
    await trial.done("technician", recordStep, { stepId: first?.id }, minutes(12));
    await trial.done("technician", recordStep, { stepId: second?.id }, minutes(40));
    expect(await entries()).toMatchObject([
      { operation_code: first?.operationCode, started_at: demoNow, stopped_at: minutes(12) },
      { operation_code: second?.operationCode, started_at: minutes(12), stopped_at: null },
    ]);
  });

  test("stopped by a device that kept its entry stops when the device says", async () => {
    await trial.done("technician", startClock, { jobId });
    await trial.done("technician", stopClock, { at: minutes(15).toISOString() }, minutes(50));
    expect(await entries()).toMatchObject([{ stopped_at: minutes(15) }]);
    expect(await stepOf(() => true)).toMatchObject({ state: "open" });
  });
});
