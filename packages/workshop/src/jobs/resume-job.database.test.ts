import { describe, expect, test } from "vitest";
import { acceptedJob } from "../testing/accepted-job";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { listJobs } from "./list-jobs";
import { readJob } from "./read-job";
import { resumeJob } from "./resume-job";
import { stopJob } from "./stop-job";

const trial = demoWorkshop();
const stopped = "Cylinder 3 leaks; the customer thinks it over.";
const resumed = "Engine repaired elsewhere, leak-down 6 %.";
const later = new Date(demoNow.getTime() + 3 * 86_400_000);

async function stoppedJob(before = "") {
  const job = await acceptedJob(trial);
  if (before) await trial.sql(`update job set ${before} where id = $1`, [job.jobId]);
  await trial.done("manager", stopJob, { jobId: job.jobId, reason: stopped });
  return job;
}

describe("a stopped job", () => {
  test("says on its page and in the list when and why it was stopped", async () => {
    const { jobId, plate } = await stoppedJob();
    const job = await trial.done("desk", readJob, { jobId });
    expect(job).toMatchObject({ status: "stopped", stopped: { at: demoNow, because: stopped } });
    const { jobs } = await trial.done("desk", listJobs, { view: "stopped", search: plate });
    expect(jobs).toMatchObject([{ id: jobId, stoppedBecause: stopped }]);
  });

  test("can be taken up again by a manager, and nothing else is offered on it", async () => {
    const { jobId } = await stoppedJob();
    const nothing = { book: false, stop: false, count: false, finish: false, settleFaults: false };
    const seen = async (who: "desk" | "manager") => (await trial.done(who, readJob, { jobId })).may;
    expect(await seen("manager")).toMatchObject({ ...nothing, resume: true });
    expect(await seen("desk")).toMatchObject({ ...nothing, resume: false });
  });

  test("waits for its booking again when its vehicle never came in, and still says why it was stopped", async () => {
    const { jobId } = await stoppedJob();
    const done = await trial.done("manager", resumeJob, { jobId, reason: resumed }, later);
    expect(done).toMatchObject({ status: "waiting" });
    const job = await trial.done("desk", readJob, { jobId });
    expect(job.stopped).toEqual({
      at: demoNow,
      because: stopped,
      resumed: { at: later, because: resumed },
    });
    const said = job.timeline.map(({ sentence }) => sentence);
    expect(said).toContain(`Stopped: ${stopped}`);
    expect(said).toContain(`Taken up again: ${resumed}`);
  });

  test("goes on in work when it had begun", async () => {
    const { jobId } = await stoppedJob("status = 'in_work', started_at = now()");
    const done = await trial.done("manager", resumeJob, { jobId, reason: resumed });
    expect(done).toMatchObject({ status: "inWork" });
  });

  test("is checked in again when its vehicle was here and nothing had begun", async () => {
    const { jobId, workshopId } = await stoppedJob("status = 'checked_in'");
    await trial.sql(
      `insert into check_in (id, workshop_id, job_id, odometer_km, keys, condition, person_id, at)
       select gen_random_uuid(), $1, $2, 24400, 2, 'No marks.', id, now() from person where email = 'tilda@saltbush.example'`,
      [workshopId, jobId],
    );
    const done = await trial.done("manager", resumeJob, { jobId, reason: resumed });
    expect(done).toMatchObject({ status: "checkedIn" });
  });

  test("stopped a second time says the newer reason, and no more that it was taken up", async () => {
    const { jobId } = await stoppedJob();
    await trial.done("manager", resumeJob, { jobId, reason: resumed });
    await trial.done("manager", stopJob, { jobId, reason: "Sold the vehicle after all." }, later);
    const job = await trial.done("desk", readJob, { jobId });
    expect(job.stopped).toEqual({ at: later, because: "Sold the vehicle after all.", resumed: null });
  });
});

describe("taking a job up again", () => {
  test("is refused where it is not stopped, without a reason, and to anybody but a manager", async () => {
    const running = await acceptedJob(trial);
    const wanted = { jobId: running.jobId, reason: resumed };
    expect((await trial.refused("manager", resumeJob, wanted)).code).toBe("not-stopped");
    const { jobId } = await stoppedJob();
    expect(await trial.refused("manager", resumeJob, { jobId, reason: "go on" })).toMatchObject({
      code: "resume-reason",
      field: "reason",
    });
    for (const part of ["desk", "technician", "owner"] as const)
      expect((await trial.refused(part, resumeJob, { jobId, reason: resumed })).code).toBe("not-allowed");
  });

  test("of another workshop's job is not found", async () => {
    const { jobId } = await stoppedJob();
    await trial.sql("update person set roles = '{manager}' where email = 'samir@gulfboost.example'");
    expect((await trial.refused("gulfOwner", resumeJob, { jobId, reason: resumed })).code).toBe(
      "job-not-found",
    );
  });
});
