import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { readJob } from "../jobs/read-job";
import { jobMargin } from "../owner/job-margin";
import { acceptedJob } from "../testing/accepted-job";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop, type Part } from "../testing/demo-workshop";
import { startClock, stopClock } from "./clock";
import { correctClock } from "./correct-clock";
import { myDay } from "./my-day";

const trial = demoWorkshop();
const hours = (count: number) => new Date(demoNow.getTime() + count * 3_600_000);
/** 09:00 the next morning. */
const nextMorning = hours(24);
const reason = "Forgot to clock off when I went home.";
let jobId = "";
let otherId = "";

beforeAll(() => trial.sql("delete from clock_entry"));

beforeEach(async () => {
  await trial.sql("delete from clock_entry");
  jobId = await arrived();
  otherId = await arrived();
});

async function arrived(): Promise<string> {
  const job = await acceptedJob(trial, { items: ["hp-pump-upgrade", "oil-service"] });
  await trial.sql("update job set status = 'checked_in' where id = $1", [job.jobId]);
  return job.jobId;
}

async function entryOf(id = jobId) {
  const [row] = await trial.sql("select * from clock_entry where job_id = $1", [id]);
  return String(row?.id);
}

/** Tilda's clock, left running from 09:00 until she comes in again. */
async function leftRunning() {
  await trial.done("technician", startClock, { jobId });
  await trial.done("technician", stopClock, {}, nextMorning);
  return entryOf();
}

const correct = (entryId: string, stoppedAt = "2026-11-25T16:30", more: object = {}) => ({
  entryId,
  stoppedAt,
  reason,
  ...more,
});

describe("a clock left running overnight", () => {
  test("is set right by a manager, and the day and the job show the corrected figure with its note", async () => {
    const entryId = await leftRunning();
    await trial.done("manager", correctClock, correct(entryId), hours(72));
    const { clock, timeline } = await trial.done("manager", readJob, { jobId }, hours(72));
    expect(timeline.map(({ sentence }) => sentence)).toContain(`Clock corrected: ${reason}`);
    expect(clock).toMatchObject([
      { minutes: 450, correction: { by: "Marek Oduya", because: reason }, personName: "Tilda Brennock" },
    ]);
    const day = await trial.done("technician", myDay, {}, nextMorning);
    expect(day.clocked).toMatchObject([{ id: entryId, minutes: 450, correction: { because: reason } }]);
    const margin = await trial.done("owner", jobMargin, { jobId });
    expect(margin.clock).toMatchObject([{ hours: 7.5, correctedBecause: reason }]);
  });

  test("keeps its old end in the audit record", async () => {
    const entryId = await leftRunning();
    await trial.done("manager", correctClock, correct(entryId), nextMorning);
    const [event] = await trial.sql(
      "select actor_name, before, after from audit_event where entity_id = $1 and use_case = 'floor.correct-clock'",
      [entryId],
    );
    expect(event).toMatchObject({
      actor_name: "Marek Oduya",
      before: { stoppedAt: nextMorning.toISOString() },
      after: { stoppedAt: "2026-11-25T06:00:00.000Z", correctedBecause: reason },
    });
  });

  test("that still runs in the morning is stopped where the work ended, by the person themself", async () => {
    await trial.done("technician", startClock, { jobId });
    const entryId = await entryOf();
    const before = await trial.done("technician", myDay, {}, nextMorning);
    expect(before.clocked).toMatchObject([{ id: entryId, stoppedAt: null, mayCorrect: true }]);
    await trial.done("technician", correctClock, correct(entryId), nextMorning);
    const day = await trial.done("technician", myDay, {}, nextMorning);
    expect(day.clock).toBeNull();
    expect(day.clocked).toMatchObject([{ minutes: 450 }]);
  });
});

describe("a correction", () => {
  test("of one's own clock is made on the day that it stopped, and not later", async () => {
    const entryId = await leftRunning();
    const late = await trial.refused("technician", correctClock, correct(entryId), hours(48));
    expect(late.code).toBe("clock-not-yours");
    await trial.done("technician", correctClock, correct(entryId), hours(26));
  });

  test("of somebody else's clock is a manager's", async () => {
    const entryId = await leftRunning();
    const refusal = await trial.refused("otherTechnician", correctClock, correct(entryId), nextMorning);
    expect(refusal.code).toBe("clock-not-yours");
  });

  const wrong: readonly (readonly [string, object, string])[] = [
    ["without a reason", { reason: "forgot" }, "clock-reason"],
    ["to something that is no time", { stoppedAt: "half past four" }, "clock-not-a-time"],
    ["into the future", { stoppedAt: "2026-11-26T09:30" }, "clock-in-future"],
    ["to before it began", { stoppedAt: "2026-11-25T08:59" }, "clock-before-start"],
    ["to nothing", { stoppedAt: "" }, "invalid-input"],
  ];
  test.each(wrong)("%s is refused", async (_, change, code) => {
    const entryId = await leftRunning();
    const input = correct(entryId, undefined, change);
    expect((await trial.refused("manager", correctClock, input, nextMorning)).code).toBe(code);
  });

  test("over what the same person began next is refused, naming that job", async () => {
    await trial.done("technician", startClock, { jobId });
    await trial.done("technician", startClock, { jobId: otherId, switches: true }, hours(2));
    await trial.done("technician", stopClock, {}, hours(3));
    const input = correct(await entryOf(), "2026-11-25T11:30");
    const refusal = await trial.refused("manager", correctClock, input, nextMorning);
    expect(refusal.code).toBe("clock-overlaps");
    expect(refusal.sentence).toContain("from Wed 25 Nov, 11:00");
    await trial.done("manager", correctClock, correct(await entryOf(), "2026-11-25T11:00"), nextMorning);
  });

  test("of an entry that is not there, or of another workshop, is not found", async () => {
    const entryId = await leftRunning();
    await trial.sql("update person set roles = '{manager}' where email = 'samir@gulfboost.example'");
    const stranger: Part = "gulfOwner";
    expect((await trial.refused(stranger, correctClock, correct(entryId))).code).toBe(
      "clock-entry-not-found",
    );
  });

  test("by the desk is not allowed", async () => {
    const entryId = await leftRunning();
    expect((await trial.refused("desk", correctClock, correct(entryId))).code).toBe("not-allowed");
  });

  test("without a name or a reason is refused by the database itself", async () => {
    const entryId = await leftRunning();
    const change = trial.sql("update clock_entry set corrected_at = now() where id = $1", [entryId]);
    await expect(change).rejects.toThrow(/correction_has_its_reason/);
  });
});
