import { expect, test } from "vitest";
import { recordInspection } from "../builds/record-inspection";
import { acceptedJob } from "../testing/accepted-job";
import { demoWorkshop } from "../testing/demo-workshop";
import { dynoTrial, shippedLog } from "../testing/dyno-trial";
import { readCard } from "./read-card";

const trial = demoWorkshop();
const dyno = dynoTrial(trial);

const readings = {
  odometerKm: 24_400,
  leakDownWorstPct: 8,
  leakDownSpreadPct: 3,
  fuelTrimWorstPct: 2,
  misfireCodes: false,
  coolingSound: true,
  note: "",
};

async function cardOf(jobId: string): Promise<readonly string[]> {
  const { steps } = await trial.done("technician", readCard, { jobId });
  return [...new Set(steps.map(({ operationCode }) => operationCode))];
}

async function buildOf(jobId: string): Promise<string> {
  const [row] = await trial.sql("select build_id from job where id = $1", [jobId]);
  return String(row?.build_id);
}

test("a card does not ask again for the inspection and the baseline that its build has on record", async () => {
  const { jobId } = await acceptedJob(trial);
  const card = await cardOf(jobId);
  expect(card).not.toContain("inspect-vehicle");
  expect(card).not.toContain("coil-covers-inspection");
  expect(card).not.toContain("measure-baseline");
  expect(card).toContain("fit-blower-24");
});

test("what is recorded after the acceptance comes off the card, the rest stays in order", async () => {
  const { jobId, vehicleId } = await acceptedJob(trial, { inspection: "none", baseline: false });
  expect(await cardOf(jobId)).toEqual(expect.arrayContaining(["inspect-vehicle", "measure-baseline"]));

  await trial.done("technician", recordInspection, { buildId: await buildOf(jobId), ...readings });
  const inspected = await cardOf(jobId);
  expect(inspected).not.toContain("inspect-vehicle");
  expect(inspected).toContain("measure-baseline");

  const setUp = { kind: "baseline", vehicleId };
  expect((await dyno.import("technician", setUp, shippedLog("baseline"))).ok).toBe(true);
  const measured = await cardOf(jobId);
  expect(measured).toEqual(inspected.filter((code) => !/baseline/.test(code)));
});

test("a card on which work has begun stays as it is", async () => {
  const { jobId } = await acceptedJob(trial, { inspection: "none", baseline: false });
  const card = await cardOf(jobId);
  await trial.sql("update job set status = 'checked_in' where id = $1", [jobId]);
  await trial.done("technician", recordInspection, { buildId: await buildOf(jobId), ...readings });
  expect(await cardOf(jobId)).toEqual(card);
});

test("a demo job that was inspected before it was quoted begins with its own work", async () => {
  const [row] = await trial.sql(
    "select j.id from job j join vehicle v on v.id = j.vehicle_id where v.plate = '7SV 5NB'",
  );
  expect(await cardOf(String(row?.id))).not.toContain("inspect-vehicle");
});
