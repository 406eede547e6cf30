import { expect, test } from "vitest";
import { bookJob } from "../planning-desk/book";
import { acceptedJob } from "../testing/accepted-job";
import { demoWorkshop } from "../testing/demo-workshop";
import { measureBaseline } from "../testing/measured-baseline";
import { jobGate } from "./gate";

const trial = demoWorkshop();

async function baselineOf(jobId: string) {
  const gate = await trial.done("manager", jobGate, { jobId });
  return gate.points.find(({ point }) => point === "baseline");
}

async function unmeasured(different: { peaksKw?: readonly number[]; factorValid?: boolean } = {}) {
  const job = await acceptedJob(trial, { baseline: false });
  const [row] = await trial.sql("select build_id from job where id = $1", [job.jobId]);
  if (Object.keys(different).length > 0)
    await trial.database.inWorkshop(job.workshopId, (tx) =>
      measureBaseline(tx, { ...job, buildId: String(row?.build_id), ...different }),
    );
  return job;
}

test("a job that promises power is not booked before its baseline is measured, and is told by whom", async () => {
  const job = await unmeasured();
  const [hoist] = await trial.sql("select id from resource where name = 'Hoist 1' and workshop_id = $1", [
    job.workshopId,
  ]);
  const blocks = [
    {
      resourceId: hoist?.id,
      startsAt: "2026-12-01T08:00",
      endsAt: "2026-12-01T16:00",
      work: "Fit the blower",
    },
  ];
  const refusal = await trial.refused("manager", bookJob, { jobId: job.jobId, blocks });
  expect(refusal.code).toBe("gate-shut");
  expect(JSON.stringify(refusal.data)).toContain("no baseline yet");
  expect(await baselineOf(job.jobId)).toMatchObject({ met: false, place: "dyno", safety: false });
  expect((await baselineOf(job.jobId))?.resolve).toMatch(/^Dyno operator: /);

  // No one is hurt by it, so a manager may answer for it.
  const reason = "Owner brings a certified sheet from another dyno";
  await trial.done("manager", bookJob, {
    jobId: job.jobId,
    blocks,
    overrides: [{ point: "baseline", reason }],
  });
  expect(await baselineOf(job.jobId)).toMatchObject({ met: false, overridden: { reason } });
});

test("three runs that agree meet the point", async () => {
  const { jobId } = await acceptedJob(trial);
  expect(await baselineOf(jobId)).toMatchObject({ met: true, resolve: "" });
});

test("two runs are not a baseline", async () => {
  const { jobId } = await unmeasured({ peaksKw: [261, 262] });
  expect(await baselineOf(jobId)).toMatchObject({ met: false, sentence: expect.stringContaining("2 of 3") });
});

test("three runs that do not agree are not a baseline", async () => {
  const { jobId } = await unmeasured({ peaksKw: [240, 262, 261] });
  expect(await baselineOf(jobId)).toMatchObject({ met: false, sentence: expect.stringContaining("spread") });
});

test("runs in air that the correction does not allow are not a baseline", async () => {
  const { jobId } = await unmeasured({ factorValid: false });
  expect(await baselineOf(jobId)).toMatchObject({
    met: false,
    sentence: expect.stringContaining("milder air"),
  });
});

test("a job that promises no power has no such point", async () => {
  const { jobId } = await acceptedJob(trial, { items: ["dark-trim"], inspection: "none" });
  expect(await baselineOf(jobId)).toBeUndefined();
});

test("every job of the demo that promises power and waits, is booked or is at work has its baseline", async () => {
  const jobs = await trial.sql(
    `select j.id, j.number from job j join quote_version v on v.id = j.version_id
     where v.promise is not null and v.promise <> 'null' and j.customer_id in
       (select id from customer where email like '%@customers.example')`,
  );
  expect(jobs.length).toBeGreaterThanOrEqual(4);
  for (const { id, number } of jobs)
    expect([number, (await baselineOf(String(id)))?.met]).toEqual([number, true]);
});
