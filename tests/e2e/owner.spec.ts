import type { Page } from "@playwright/test";
import { checkAccessibility, expect, test } from "./fixtures";
import { ownerReadsTheMargin, ownerRecordsTheParts } from "./story/owner";

/** "−$1,740.20" in cents. */
function cents(text: string): number {
  const amount = /([\u2212+]?)\$([\d,]+)\.(\d\d)/.exec(text);
  if (!amount) throw new Error(`no amount in "${text}"`);
  const [, sign, whole = "", part = ""] = amount;
  return (sign === "\u2212" ? -1 : 1) * Number(whole.replaceAll(",", "") + part);
}

/** The amounts of a waterfall from its first row to its last. */
async function waterfallOf(page: Page, name: RegExp): Promise<number[]> {
  const cells = page.getByRole("table", { name }).locator("tbody tr td:last-child");
  await expect(cells.first()).toBeVisible();
  return (await cells.allTextContents()).map(cents);
}

function addsUp(amounts: readonly number[]): void {
  expect(amounts.length).toBeGreaterThan(2);
  const [start = 0, ...rest] = amounts;
  const end = rest.pop();
  expect(rest.reduce((sum, step) => sum + step, start)).toBe(end);
}

test("the owner compares packages, opens one, and finds the jobs and clock entries behind a step", async ({
  openAs,
}) => {
  const owner = await openAs("owner");
  await owner.goto("/owner");
  await expect(owner.getByRole("heading", { level: 1, name: "Margins" })).toBeVisible();
  addsUp(await waterfallOf(owner, /a step opens into the jobs behind it/));
  await expect(owner.getByText(/An hour of the dyno leaves most in/)).toBeVisible();
  await checkAccessibility(owner);

  await owner.getByRole("navigation", { name: "Period" }).getByRole("link", { name: "All time" }).click();
  await expect(owner).toHaveURL(/period=all/);
  await owner.getByRole("region", { name: "Packages" }).getByRole("link", { name: "Long Grade 2.4" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: "Long Grade 2.4" })).toBeVisible();
  await expect(owner).toHaveURL(/long-grade-24\?period=all/);
  const steps = await waterfallOf(owner, /a step opens into the jobs behind it/);
  addsUp(steps);
  await expect(owner.getByText(/To earn the quoted .* it would have to sell at/)).toBeVisible();
  await checkAccessibility(owner);

  const labour = owner.getByRole("row", { name: /^Labour/ });
  const lost = cents((await labour.locator("td").last().textContent()) ?? "");
  await labour.getByRole("link", { name: "Labour" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: "Labour: Long Grade 2.4" })).toBeVisible();
  const total = owner
    .getByRole("region", { name: "Jobs, what ran over furthest first" })
    .locator("tfoot td")
    .first();
  expect(cents((await total.textContent()) ?? "")).toBe(-lost);
  await checkAccessibility(owner);

  await owner
    .getByRole("link", { name: /^Job \d+$/ })
    .first()
    .click();
  await expect(owner).toHaveURL(/\/owner\/jobs\/.*#labour$/);
  await expect(owner.getByRole("region", { name: "Clock entries" })).toBeVisible();
  addsUp(await waterfallOf(owner, /A step leads to the entries behind it/));
  await checkAccessibility(owner);
});

test("a job's page lists clock entries and costs that add up to its waterfall", async ({ openAs }) => {
  const owner = await openAs("owner");
  await owner.goto("/owner/packages/tow-ready?period=all");
  await owner
    .getByRole("link", { name: /^Job \d+$/ })
    .first()
    .click();
  await expect(owner.getByRole("heading", { level: 1, name: /^Job \d+: margin$/ })).toBeVisible();
  const clock = owner.getByRole("region", { name: "Clock entries" });
  const costs = (await clock.locator("tbody tr").all()).map((row) => row.locator("td").nth(1));
  let sum = 0;
  for (const cost of costs) sum += cents((await cost.textContent()) ?? "");
  const labour = owner.getByRole("region", { name: "Cost by kind" }).getByRole("row", { name: /^Labour/ });
  expect(cents((await labour.locator("td").nth(1).textContent()) ?? "")).toBe(sum);
});

test("the strip of jobs is walked by keyboard and opens a job", async ({ openAs }) => {
  const owner = await openAs("owner");
  await owner.goto("/owner/packages/long-haul-19?period=all");
  const strip = owner.getByRole("slider", { name: /Earned margin of each job/ });
  await strip.focus();
  await owner.keyboard.press("ArrowRight");
  await expect(strip).toHaveAttribute("aria-valuetext", /^Job \d+: .*% of the sell price$/);
  await owner.keyboard.press("Enter");
  await expect(owner.getByRole("heading", { level: 1, name: /^Job \d+: margin$/ })).toBeVisible();
});

test("an invoice is recorded on a job and taken off its margin; a wrong amount keeps what was typed", async ({
  openAs,
}) => {
  const owner = await openAs("owner");
  await owner.goto("/jobs?view=current&search=7SV+5NB");
  const job =
    (await owner
      .getByRole("link", { name: /^Job \d+$/ })
      .first()
      .getAttribute("href")) ?? "";
  await owner.goto(`/owner${job}`);
  await expect(owner.getByText(/Parts and materials: quoted at .* nothing against it/)).toBeVisible();
  const before = (await waterfallOf(owner, /A step leads to the entries behind it/)).at(-1) ?? 0;
  await ownerRecordsTheParts(owner);
  await expect(owner.getByText(/Parts and materials: quoted at/)).toHaveCount(0);
  const after = (await waterfallOf(owner, /A step leads to the entries behind it/)).at(-1) ?? 0;
  expect(before - after).toBe(17_940_50);

  const form = owner.getByRole("form", { name: "Record a cost" });
  await form.getByRole("button", { name: /For \(required\)$/ }).click();
  await owner.getByRole("option", { name: "Other costs" }).click();
  await form.getByLabel("What it is").fill("Loan car");
  await form.getByLabel("Amount without tax").fill("about 90");
  await form.getByRole("button", { name: "Record the cost" }).click();
  await expect(form.getByRole("alert")).toContainText("Type the amount without tax");
  await expect(form.getByLabel("What it is")).toHaveValue("Loan car");
  await expect(form.getByLabel("Amount without tax")).toHaveValue("about 90");
});

test("the file for a spreadsheet has a line for each job of the page", async ({ openAs }) => {
  const owner = await openAs("owner");
  await owner.goto("/owner/packages/stand-tall?period=all");
  const rows = owner.getByRole("region", { name: "Jobs, what earned least first" }).locator("tbody tr");
  await expect(rows.first()).toBeVisible();
  const jobs = await rows.count();
  const download = owner.waitForEvent("download");
  await owner.getByRole("link", { name: "Export CSV" }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^margins-stand-tall-all-\d{4}-\d\d-\d\d\.csv$/);
  const answer = await owner.request.get("/api/owner/margins?code=stand-tall&period=all");
  const lines = (await answer.text()).trimEnd().split("\r\n");
  expect(lines).toHaveLength(jobs + 1);
});

test("a package without a job in the period says so, and what does not exist is not found", async ({
  openAs,
  expectConsoleError,
}) => {
  expectConsoleError(/404/);
  const owner = await openAs("owner");
  const missing = await owner.goto("/owner/packages/no-such-package");
  await expect(owner.getByRole("heading", { level: 1 })).toBeVisible();
  expect([200, 404]).toContain(missing?.status());
  await expect(owner.getByText(/margin/i)).toHaveCount(0);
  await owner.goto("/owner/packages/tow-ready/coffee");
  await expect(owner.getByText("Quoted cost")).toHaveCount(0);
  await owner.goto("/owner/jobs/no-id");
  await expect(owner.getByText("Cost by kind")).toHaveCount(0);

  const gulf = await openAs("samir@gulfboost.example");
  await gulf.goto("/owner");
  await expect(gulf.getByText("No job was handed over in this time.")).toBeVisible();
  await checkAccessibility(gulf);
  await gulf.goto("/owner/packages/long-grade-24");
  await expect(gulf.getByText("No job of it was handed over in this time.")).toBeVisible();
});

test("margins are the owner's alone", async ({ openAs }) => {
  for (const who of ["desk", "manager", "technician"] as const) {
    const other = await openAs(who);
    await other.goto("/owner");
    await expect(other.getByText("Your role does not include this")).toBeVisible();
    expect((await other.request.get("/api/owner/margins")).status()).toBe(403);
  }
  const nobody = await openAs("nobody");
  expect((await nobody.request.get("/api/owner/margins")).status()).toBe(401);
});

test("the owner's part of the story: from the package to the job, with its invoice", async ({ openAs }) => {
  const owner = await openAs("owner");
  await owner.goto("/owner/packages/long-grade-24");
  const number = await owner
    .getByRole("link", { name: /^Job \d+$/ })
    .last()
    .textContent();
  await ownerReadsTheMargin(owner, { jobNumber: /\d+/.exec(number ?? "")?.[0] ?? "" });
});
