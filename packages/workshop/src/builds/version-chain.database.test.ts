import { expect, test } from "vitest";
import { newId } from "../core/new-id";
import { acceptedJob } from "../testing/accepted-job";
import { demoWorkshop } from "../testing/demo-workshop";
import { versionChain } from "./version-chain";

const trial = demoWorkshop();

test("a job's chain is that of its accepted version, fuel upgrade included", async () => {
  const { jobId, versionId } = await acceptedJob(trial);
  const ofJob = await trial.done("technician", versionChain, { jobId });
  expect(ofJob).toEqual(await trial.done("desk", versionChain, { versionId }));
  const pump = ofJob.capacities.find(({ link }) => link === "high-pressure-pump");
  expect(pump?.demand).toBeGreaterThan(0);
  expect(pump?.met).toBe(true);
});

test("a version that sells the blower without the pump shows where it gives way", async () => {
  const { versionId } = await acceptedJob(trial, { items: ["blower-24-92"] });
  const { capacities } = await trial.done("desk", versionChain, { versionId });
  expect(capacities.find(({ link }) => link === "high-pressure-pump")).toMatchObject({ met: false });
});

test("a version that is not here has no chain", async () => {
  const refusal = await trial.refused("desk", versionChain, { versionId: newId() });
  expect(refusal.code).toBe("build-not-found");
});
