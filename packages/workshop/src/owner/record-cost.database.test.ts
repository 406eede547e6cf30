import { beforeAll, describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { jobMargin } from "./job-margin";
import { recordCost } from "./record-cost";

const trial = demoWorkshop();
let jobId = "";
let person = "";

beforeAll(async () => {
  const [job] = await trial.sql(
    "select j.id from job j join workshop w on w.id = j.workshop_id where j.status = 'in_work' and w.name like 'Saltbush%' and j.package_code = 'long-grade-24'",
  );
  const [joss] = await trial.sql("select id from person where email = 'joss@saltbush.example'");
  jobId = String(job?.id);
  person = String(joss?.id);
});

const invoice = {
  kind: "parts",
  description: "Pellavane, invoice 8841",
  amount: "11,482.35",
  on: "2026-11-20",
};
const marginOf = () => trial.done("owner", jobMargin, { jobId });

describe("recording what a job cost", () => {
  test("takes it off the margin to the cent, under its kind, with its line in the record", async () => {
    const before = await marginOf();
    expect(before.nothingYet).toContain("parts");
    const { id } = await trial.done("owner", recordCost, { jobId, ...invoice });
    const after = await marginOf();
    expect(after.earnings.actualMinor.parts - before.earnings.actualMinor.parts).toBe(11_482_35);
    expect(before.earnings.actualMarginMinor - after.earnings.actualMarginMinor).toBe(11_482_35);
    expect(after.nothingYet).not.toContain("parts");
    const [line] = await trial.sql(
      "select use_case, after->>'amountMinor' as amount from audit_event where entity_id = $1",
      [id],
    );
    expect(line).toEqual({ use_case: "owner.record-cost", amount: "1148235" });
  });

  test("a supplier's credit note is an amount with a minus", async () => {
    const before = await marginOf();
    await trial.done("owner", recordCost, {
      jobId,
      ...invoice,
      description: "Credit for the core",
      amount: "-500",
    });
    const after = await marginOf();
    expect(after.earnings.actualMarginMinor - before.earnings.actualMarginMinor).toBe(500_00);
  });

  test.each([
    ["words for an amount", { amount: "a lot" }, "cost-not-an-amount"],
    ["no amount", { amount: "" }, "cost-not-an-amount"],
    ["tenths of a cent", { amount: "1.005" }, "cost-not-an-amount"],
    ["more than anything costs", { amount: "99999999999" }, "cost-not-an-amount"],
    ["nothing", { amount: "0.00" }, "cost-is-nothing"],
    ["an invoice of tomorrow", { on: "2026-11-26" }, "cost-in-future"],
    ["a day that does not exist", { on: "2026-02-30" }, "invalid-input"],
    ["labour, which the clock tells", { kind: "labour" }, "invalid-input"],
    ["a cost of no kind", { kind: "coffee" }, "invalid-input"],
    ["no description", { description: " " }, "invalid-input"],
    ["a job that is none", { jobId: "0198c5a0-0000-7000-8000-000000000000" }, "job-not-found"],
  ])("refuses %s", async (_, wrong, code) => {
    const refusal = await trial.refused("owner", recordCost, { jobId, ...invoice, ...wrong });
    expect(refusal.code).toBe(code);
    expect(refusal.sentence).toMatch(/\.$/);
  });

  test("another workshop's job cannot be charged", async () => {
    expect((await trial.refused("gulfOwner", recordCost, { jobId, ...invoice })).code).toBe("job-not-found");
  });
});

describe("the clock in the margin", () => {
  test("a clock that runs counts when it stops", async () => {
    const before = await marginOf();
    await trial.sql(
      "insert into clock_entry (id, workshop_id, job_id, person_id, operation_code, started_at) select gen_random_uuid(), workshop_id, id, $2, 'fit-hp-pump', '2026-11-24T20:00:00Z' from job where id = $1",
      [jobId, person],
    );
    const running = await marginOf();
    expect(running.earnings).toEqual(before.earnings);
    expect(running.clock.filter(({ stoppedAt }) => stoppedAt === null)).toHaveLength(1);
    await trial.sql("update clock_entry set stopped_at = '2026-11-24T21:10:00Z' where stopped_at is null");
    const stopped = await marginOf();
    // 70 minutes at 66.00 an hour: 77.00.
    expect(stopped.earnings.actualMinor.labour - before.earnings.actualMinor.labour).toBe(77_00);
  });

  test("work on a dyno operation costs the dyno's hour and counts as dyno", async () => {
    const before = await marginOf();
    await trial.sql(
      "insert into clock_entry (id, workshop_id, job_id, person_id, operation_code, started_at, stopped_at) select gen_random_uuid(), j.workshop_id, j.id, $2, o.code, '2026-11-24T21:30:00Z', '2026-11-24T22:00:00Z' from job j join operation o on o.workshop_id = j.workshop_id and o.rate = 'dyno' where j.id = $1 limit 1",
      [jobId, person],
    );
    const after = await marginOf();
    expect(after.earnings.actualMinor.labour).toBe(before.earnings.actualMinor.labour);
    const [site] = await trial.sql(
      "select dyno_cost_minor_per_hour::int as hour from site s join workshop w on w.id = s.workshop_id where w.name like 'Saltbush%'",
    );
    expect(after.earnings.actualMinor.dyno - before.earnings.actualMinor.dyno).toBe(Number(site?.hour) / 2);
    expect(after.dynoHours - before.dynoHours).toBeCloseTo(0.5, 9);
  });
});
