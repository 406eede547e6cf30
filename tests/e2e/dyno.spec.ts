import { readFileSync } from "node:fs";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import {
  fillSetUp,
  importLog,
  openJobDyno,
  operatorMeasuresTheBaseline,
  operatorProvesThePromise,
  shippedLogs,
} from "./story/dyno";

/** Half way through its blower, with a baseline; its job is the one that waits for a proof. */
const BLOWER = "7SV 5NB";
const UNMEASURED = "1AB 2CD";

test("the operator measures a baseline, and is told what is wrong with bad logs on the way", async ({
  page,
  expectConsoleError,
}) => {
  await signInAs(page, "technician");
  await page.goto("/dyno");
  await checkAccessibility(page);
  await page.getByRole("link", { name: `Baseline of ${UNMEASURED}` }).click();
  // The browser reports every answer that refuses.
  expectConsoleError(/status of 4(22|09)/);
  await test.step("a log with a word among its numbers", async () => {
    const form = await fillSetUp(page);
    const spoilt = "time_s,engine_rpm,hub_power_kw\n0,1800,40\n0.1,high,41\n";
    await form
      .getByLabel("Log")
      .setInputFiles({ name: "x.csv", mimeType: "text/csv", buffer: Buffer.from(spoilt) });
    await form.getByRole("button", { name: "Import the log" }).click();
    await expect(form.getByRole("alert")).toContainText('Line 3 has "high" in engine_rpm');
    await expect(form.getByLabel("Barometer in the cell")).toHaveValue("99.2");
  });
  await test.step("a picture", async () => {
    const form = page.getByRole("form", { name: "Import runs" });
    const picture = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]);
    await form.getByLabel("Log").setInputFiles({ name: "x.png", mimeType: "image/png", buffer: picture });
    await form.getByRole("button", { name: "Import the log" }).click();
    await expect(form.getByRole("alert")).toContainText("This is not a text file");
  });
  await test.step("a barometer in hectopascals", async () => {
    const form = page.getByRole("form", { name: "Import runs" });
    await form.getByLabel("Barometer in the cell").fill("992");
    await form.getByLabel("Log").setInputFiles(shippedLogs.baseline);
    await form.getByRole("button", { name: "Import the log" }).click();
    await expect(form.getByRole("alert")).toContainText("992 hPa are 99.2 kPa");
  });
  await operatorMeasuresTheBaseline(page, { plate: UNMEASURED });
  await checkAccessibility(page);
  await test.step("the same log again", async () => {
    const form = await fillSetUp(page);
    await form.getByLabel("Log").setInputFiles(shippedLogs.baseline);
    await form.getByRole("button", { name: "Import the log" }).click();
    await expect(form.getByRole("alert")).toContainText("This very file is already kept as the baseline");
  });
});

test("the operator proves the promise, reads it at a speed, and certifies it", async ({ page, openAs }) => {
  await signInAs(page, "technician");
  const story = await storyOf(page);
  await openJobDyno(page, story);
  await test.step("too few runs demonstrate nothing", async () => {
    const two = readFileSync(shippedLogs.proof, "utf8")
      .split("\n")
      .filter((line) => !line.startsWith("3,"))
      .join("\n");
    await importLog(page, { name: "two-runs.csv", mimeType: "text/csv", buffer: Buffer.from(two) });
    await expect(page.getByText(/^Not demonstrated: 2 of 3 runs made/)).toBeVisible();
  });
  await operatorProvesThePromise(page, story);
  await checkAccessibility(page);
  await test.step("the read-out follows the arrow keys", async () => {
    const slider = page.getByRole("slider", { name: "Engine speed of the read-out" });
    await slider.focus();
    await slider.press("Home");
    await slider.press("PageDown");
    await expect(page.getByRole("region", { name: "Read-out" })).toContainText(
      /At 2,\d{3} rpm|At 1,\d{3} rpm/,
    );
  });
  await test.step("the figures as observed can always be had", async () => {
    await page.getByRole("link", { name: "As observed" }).click();
    await expect(page.getByText(/as observed, not corrected/)).toBeVisible();
    await expect(page.getByRole("table", { name: /Peaks at the hubs/ })).toContainText("356kW");
  });
  await test.step("the runs of one session over one another", async () => {
    await page.getByRole("link", { name: "See its runs over one another" }).first().click();
    await expect(page.getByRole("table", { name: /Peaks at the hubs/ })).toContainText("Run 3");
  });
  await test.step("the desk reads the certificate, and measures nothing", async () => {
    const desk = await openAs("desk");
    await desk.goto(new URL(page.url()).pathname);
    await expect(desk.getByText(/^Kept: 366 kW/)).toBeVisible();
    await expect(desk.getByRole("form", { name: "Import runs" })).toHaveCount(0);
    const link = desk.getByRole("link", { name: "Certificate as PDF" });
    const answer = await desk.request.get((await link.getAttribute("href")) ?? "");
    expect(answer.headers()["content-type"]).toBe("application/pdf");
    expect((await answer.body()).subarray(0, 5).toString()).toBe("%PDF-");
  });
});

test("a run is left out with its reason, and counted again", async ({ page }) => {
  await signInAs(page, "manager");
  await page.goto("/dyno");
  await page.getByRole("link", { name: "6PH 3WD" }).first().click();
  await page.getByRole("button", { name: /^Leave a run out/ }).click();
  const leave = page.getByRole("form", { name: /^Leave a run out/ });
  await leave.getByRole("button", { name: /Run/ }).first().click();
  await page.getByRole("option", { name: /^Run 2/ }).click();
  await leave.getByLabel("Because").fill("Shifted down half way.");
  await leave.getByRole("button", { name: "Leave it out" }).click();
  await expect(page.getByText("no: Shifted down half way.")).toBeVisible();
  await expect(page.getByText(/^The baseline has 2 of 3 runs that count/)).toBeVisible();
  await checkAccessibility(page);
  await page.getByRole("button", { name: /^Count a run again/ }).click();
  const again = page.getByRole("form", { name: /^Count a run again/ });
  await again.getByRole("button", { name: /Run/ }).first().click();
  await page.getByRole("option", { name: /^Run 2/ }).click();
  await again.getByLabel("Because").fill("It was another run.");
  await again.getByRole("button", { name: "Count it again" }).click();
  await expect(page.getByText(/^Baseline measured:/)).toBeVisible();
});

async function storyOf(page: import("@playwright/test").Page) {
  await page.goto("/dyno");
  const note = page.getByRole("listitem").filter({ hasText: BLOWER }).filter({ hasText: "promised" });
  const jobNumber = /job (\d+)/.exec((await note.textContent()) ?? "")?.[1] ?? "";
  return { plate: BLOWER, jobNumber };
}
