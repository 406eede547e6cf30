import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import { fillSetUp, shippedLogs } from "./story/dyno";

/** Asked for, with a baseline of its own. */
const ENQUIRED = "6PH 3WD";

const ENGINE_RPM = 2;
const HUB_RPM = 3;
const FINAL_DRIVE = 3.36;

test("a job's page shows what its proof asked of the chain, how it was corrected and how its runs agree", async ({
  page,
}) => {
  await signInAs(page, "technician");
  await openNewestProof(page);
  await test.step("the chain, measured beside forecast and promised", async () => {
    await expect(
      page.getByText(/^Weakest link as measured: .* where it may not (rise above|fall below)/),
    ).toBeVisible();
    const torque = page.getByRole("list", { name: "Air and torque" });
    await expect(torque.getByRole("listitem").filter({ hasText: "Power at the hubs" })).toContainText(
      /% measured.*kW promised/,
    );
  });
  await test.step("the correction, part by part, and what other codes would give", async () => {
    await page
      .getByRole("button", { name: /^How it is corrected ?: Proof/ })
      .first()
      .click();
    await expect(page.getByText("1.176 × (99 ÷ p_d) × √(T ÷ 298) − 0.176").first()).toBeVisible();
    const air = page.getByRole("table", { name: "Air the engine breathed" }).first();
    await expect(air).toContainText(/Dry pressure: barometer less vapour\s*9\d\.\d{3}/);
    await expect(page.getByRole("table", { name: "What SAE J1349 (AUG2004) allows" }).first()).toContainText(
      /Air at the inlet\s*15 to 35 °C\s*\d+\.\d\s*within/,
    );
    const others = page.getByRole("table", { name: "The same runs by other codes" }).first();
    await expect(others.getByRole("row", { name: /SAE J607.*superseded/ })).toBeVisible();
    await expect(others.getByRole("row", { name: /UN R85/ })).toBeVisible();
  });
  await test.step("the spread of peak and mean, and the trend", async () => {
    await page
      .getByRole("button", { name: /^How well the runs agree ?: Proof/ })
      .first()
      .click();
    const runs = page.getByRole("table", { name: "Runs beside one another" }).first();
    await expect(runs.getByRole("row", { name: /^Spread/ })).toContainText(/\d\.\d %\s*\d\.\d %/);
    await expect(page.getByText(/^Power (falls|rises) by \d\.\d % from run to run/).first()).toBeVisible();
  });
  await checkAccessibility(page);
});

test("any sessions are drawn over one another, and read by keyboard", async ({ page }) => {
  await signInAs(page, "technician");
  await openNewestProof(page);
  const peaks = page.getByRole("table", { name: /^Peaks at the hubs/ });
  await page.getByRole("button", { name: "Choose what is drawn" }).click();
  const choice = page.getByRole("form", { name: "Choose what is drawn" });
  const [newest, ...others] = await choice.getByRole("checkbox").all();
  for (const other of others) await other.uncheck({ force: true });
  await newest?.check({ force: true });
  await choice.getByRole("button", { name: "Draw these" }).click();
  await expect(page).toHaveURL(/session=/);
  await expect(peaks.getByRole("rowheader")).toHaveText([/^Run 1/, /^Run 2/, /^Run 3/]);
  await page.getByRole("link", { name: "As the page has it" }).click();
  await expect(peaks.getByRole("rowheader").first()).toHaveText(/^Baseline/);
  await test.step("the line goes along the speeds, and says what is there", async () => {
    const slider = page.getByRole("slider", { name: "Engine speed of the read-out" });
    const at = async () => Number(await slider.getAttribute("aria-valuenow"));
    await slider.focus();
    await slider.press("Home");
    const first = await at();
    await slider.press("ArrowRight");
    expect(await at()).toBe(first + 50);
    await expect(page.getByRole("region", { name: "Read-out" }).locator("[aria-live]")).toHaveText(
      /^Baseline.*: power .* kW, torque .* N·m.*Proof.*: power/,
    );
  });
});

test("another gear than was entered is asked again, and a run whose converter slips is void", async ({
  page,
  expectConsoleError,
}) => {
  await signInAs(page, "technician");
  await page.goto("/dyno");
  await page.getByRole("link", { name: ENQUIRED }).first().click();
  // The browser reports every answer that refuses.
  expectConsoleError(/status of 422/);
  const log = { name: "slipping.csv", mimeType: "text/csv", buffer: slipping() };
  const form = await fillSetUp(page);
  await form.getByLabel("Final drive").fill("4.1");
  await form.getByLabel("Log").setInputFiles(shippedLogs.baseline);
  await form.getByRole("button", { name: "Import the log" }).click();
  await expect(form.getByRole("alert")).toContainText(/turns 3\.36 times for one turn of the hubs all along/);
  await form.getByLabel("Final drive").fill(String(FINAL_DRIVE));
  await form.getByLabel("Log").setInputFiles(log);
  await form.getByRole("button", { name: "Import the log" }).click();
  await expect(form.getByText(/3 runs imported, 1 not counted/)).toBeVisible({ timeout: 30_000 });
  const runs = page.getByRole("table", { name: /^Baseline, / }).first();
  await expect(runs.getByRole("row").nth(2)).toContainText(
    /no: Void: Engine and hubs differ from 3\.36 to 1 by .* lock the converter/,
  );
  await expect(page.getByText(/^The baseline has 2 of 3 runs that count/)).toBeVisible();
  const session = page.locator(".dyno-session").first();
  await expect(session.getByRole("button", { name: /^Leave a run out/ })).toBeVisible();
  await expect(session.getByRole("button", { name: /^Count a run again/ })).toHaveCount(0);
  await checkAccessibility(page);
});

/** The last proof that was measured, whoever's it is. */
async function openNewestProof(page: Page): Promise<void> {
  await page.goto("/dyno");
  const row = page
    .getByRole("table", { name: "Measured last" })
    .getByRole("row")
    .filter({ hasText: "Proof" });
  await row.first().getByRole("link").click();
  await expect(page.getByRole("heading", { level: 1, name: /^Dyno: .*, job \d+$/ })).toBeVisible();
}

/** The shipped baseline, its second run with a converter that is open at low speed. */
function slipping(): Buffer {
  const lines = readFileSync(shippedLogs.baseline, "utf8").trimEnd().split("\n");
  const changed = lines.map((line) => {
    const fields = line.split(",");
    const rpm = Number(fields[ENGINE_RPM]);
    if (fields[0] !== "2" || !(rpm < 2_800)) return line;
    fields[HUB_RPM] = (rpm / (FINAL_DRIVE * (1 + (2_800 - rpm) / 8_000))).toFixed(1);
    return fields.join(",");
  });
  return Buffer.from(changed.join("\n"));
}
