import path from "node:path";
import { expect, type Locator, type Page } from "@playwright/test";

/** What the stages of the story hand along about the vehicle on the dyno. */
export type DynoStory = {
  plate?: string;
  jobNumber?: string;
};

const logs = path.join(import.meta.dirname, "..", "..", "..", "shared", "demo-logs");

/** Logs of an invented vehicle; their README states the air and the peaks. */
export const shippedLogs = {
  baseline: path.join(logs, "ridgewold-baseline.csv"),
  proof: path.join(logs, "ridgewold-proof.csv"),
} as const;

/** The air of the shipped logs, as their README states it, and a gearbox at its usual temperature. */
const readings = {
  "Barometer in the cell": "99.2",
  "Air at the inlet": "31",
  Humidity: "30",
  "Gear ratio": "1",
  "Final drive": "3.36",
  "Gearbox oil": "88",
  Ramp: "400",
} as const;

/** Before anything is ordered: three runs of the vehicle as it stands, corrected. */
export async function operatorMeasuresTheBaseline(operator: Page, story: DynoStory): Promise<void> {
  await operator.goto("/dyno");
  await operator.getByRole("link", { name: `Baseline of ${story.plate}` }).click();
  await expect(operator.getByRole("heading", { level: 1, name: `Dyno: ${story.plate}` })).toBeVisible();
  await importLog(operator, shippedLogs.baseline);
  await expect(
    operator.getByText(/^Baseline measured: 261 kW at 5,?[5-7]\d\d rpm at the hubs/),
  ).toBeVisible();
}

/** The finished vehicle: three runs over the baseline, and the verdict released by name. */
export async function operatorProvesThePromise(operator: Page, story: DynoStory): Promise<void> {
  await openJobDyno(operator, story);
  await importLog(operator, shippedLogs.proof);
  await expect(operator.getByText(/^Kept: 366 kW measured, 325 kW to 375 kW promised\.$/)).toBeVisible();
  await operator.getByRole("button", { name: "Release this verdict" }).click();
  await expect(operator.getByText(/^Released by /)).toBeVisible();
  await expect(operator.getByRole("link", { name: "Certificate as PDF" })).toBeVisible();
}

/** From the dyno's own day to the runs of the job that waits for its proof. */
export async function openJobDyno(operator: Page, story: DynoStory): Promise<void> {
  await operator.goto("/dyno");
  await operator.getByRole("link", { name: `Proof of job ${story.jobNumber}` }).click();
  await expect(
    operator.getByRole("heading", { level: 1, name: new RegExp(`, job ${story.jobNumber}$`) }),
  ).toBeVisible();
}

/** Types in what the operator reads off, chooses the log, and waits until it is in. */
export async function importLog(
  operator: Page,
  file: Parameters<Locator["setInputFiles"]>[0],
): Promise<void> {
  const form = await fillSetUp(operator);
  await form.getByLabel("Log").setInputFiles(file);
  await form.getByRole("button", { name: "Import the log" }).click();
  await expect(form.getByText(/runs? imported/)).toBeVisible({ timeout: 30_000 });
}

/** The import form with every reading typed in. */
export async function fillSetUp(operator: Page): Promise<Locator> {
  const form = operator.getByRole("form", { name: "Import runs" });
  for (const [label, value] of Object.entries(readings)) await form.getByLabel(label).fill(value);
  await form.getByRole("button", { name: /Gear/ }).click();
  await operator.getByRole("option", { name: /Nearest 1:1, converter locked/ }).click();
  return form;
}
