import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import {
  certificatePdf,
  deskAttachesTheCertificate,
  deskFindsTheHandOverBlocked,
  deskHandsOver,
  deskRecordsTheBalance,
  type JobStory,
  managerBooksTheJob,
  managerCountsTheParts,
  managerIsToldWhatIsMissing,
  openHandOver,
  openJob,
  secondBookingIsRefused,
  workDayAhead,
} from "./story/jobs";
import { deskRecordsTheDeposit } from "./story/quotes";

/** The demo's M. Brandt waits for time: accepted, deposit not yet here, parts not yet counted. */
async function brandt(page: import("@playwright/test").Page): Promise<JobStory & { quoteUrl: string }> {
  await page.goto("/jobs?view=waiting&search=Brandt");
  const link = page.getByRole("link", { name: /^Job \d+$/ });
  const jobNumber = /\d+/.exec((await link.textContent()) ?? "")?.[0] ?? "";
  await link.click();
  const quote = await page.getByRole("link", { name: /^Quote \d+ version \d+$/ }).getAttribute("href");
  return { jobNumber, quoteUrl: quote ?? "", workDay: workDayAhead(new Date()) };
}

test("a job is booked once its gate is met, and no resource twice at one time", async ({ page, openAs }) => {
  test.setTimeout(180_000);
  await signInAs(page, "manager");
  const story = await brandt(page);
  await checkAccessibility(page);
  await page.goto("/plan");
  await checkAccessibility(page);
  await managerIsToldWhatIsMissing(page, story, [/Deposit not received/, /not counted yet/]);

  const desk = await openAs("desk");
  await deskRecordsTheDeposit(desk, { quoteUrl: story.quoteUrl, quoteNumber: "", customerName: "M. Brandt" });
  await managerCountsTheParts(page, story);
  await managerBooksTheJob(page, story);
  // From the top: what lies half under the head of the page would be measured as too small to press.
  await page.evaluate(() => window.scrollTo(0, 0));
  await checkAccessibility(page);
  await secondBookingIsRefused(page, story);

  await page.goto(`/plan?day=${story.workDay}`);
  await expect(
    page.getByRole("link", { name: new RegExp(`08:00 to 16:00, job ${story.jobNumber}$`) }),
  ).toHaveCount(2);
  await checkAccessibility(page);
  await page.goto(`/plan?day=${story.workDay}&span=week`);
  await expect(page.getByRole("heading", { level: 1, name: /^Plan, week of Mon/ })).toBeVisible();
  await checkAccessibility(page);
});

test("a booking moves and is cancelled by keyboard alone, and both stay in what happened", async ({
  page,
}) => {
  await signInAs(page, "manager");
  await page.goto("/jobs?view=booked&search=Haddow");
  await page.getByRole("link", { name: /^Job \d+$/ }).click();
  const bookings = page.getByRole("list", { name: "Bookings" });
  await expect(bookings.getByText("Hoist 2")).toBeVisible();
  const before = await bookings.getByRole("listitem").count();
  await bookings.getByRole("button", { name: /^Move Hoist 2/ }).focus();
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Move Hoist 2" });
  await dialog.getByRole("button", { name: /Hoist 2/ }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("option", { name: /^Hoist 3/ }).focus();
  await page.keyboard.press("Enter");
  await dialog.getByRole("button", { name: "Move the booking" }).focus();
  await page.keyboard.press("Enter");
  await expect(dialog).toBeHidden();
  await expect(bookings.getByText("Hoist 3")).toBeVisible();
  await expect(bookings.getByRole("listitem")).toHaveCount(before);

  await bookings.getByRole("button", { name: /^Cancel Hoist 3/ }).focus();
  await page.keyboard.press("Enter");
  const question = page.getByRole("alertdialog", { name: "Cancel this booking?" });
  await checkAccessibility(page);
  await question.getByRole("button", { name: "Cancel the booking" }).focus();
  await page.keyboard.press("Enter");
  await expect(bookings.getByText("Hoist 3")).toHaveCount(0);
  await expect(page.getByText(/^Booking moved to Hoist 3/)).toBeVisible();
  await expect(page.getByText(/^Booking cancelled: Hoist 3/)).toBeVisible();
});

test("a place on the plan that is pointed at goes into the form", async ({ page }) => {
  await signInAs(page, "manager");
  await page.goto(`/plan?day=${workDayAhead(new Date(), 21)}`);
  await page.getByRole("button", { name: "Book Hoist 2", exact: true }).click();
  const block = page.getByRole("group", { name: "Block 1: hoist", exact: true });
  await expect(block.getByRole("button").first()).toContainText("Hoist 2");
  await expect(block.getByRole("group", { name: "From" })).toContainText("07:00");
});

test("a vehicle that is done stays until its certificate is there, and then leaves with its pack", async ({
  page,
}) => {
  test.setTimeout(180_000);
  await signInAs(page, "desk");
  await page.goto("/jobs?view=done&search=Oyelowo");
  const link = page.getByRole("link", { name: /^Job \d+$/ });
  const jobNumber = /\d+/.exec((await link.textContent()) ?? "")?.[0] ?? "";
  await expect(page.getByText("done, not for road use")).toBeVisible();
  await checkAccessibility(page);
  const story: JobStory = { jobNumber };
  await deskFindsTheHandOverBlocked(page, story, [/[Cc]ertificate/]);
  await checkAccessibility(page);
  await deskAttachesTheCertificate(page, story);
  const file = await page.getByRole("link", { name: "certificate.pdf" }).getAttribute("href");
  const bytes = await page.request.get(file ?? "");
  expect(bytes.headers()["content-type"]).toBe("application/pdf");
  expect(bytes.headers()["x-content-type-options"]).toBe("nosniff");
  expect(Buffer.compare(await bytes.body(), certificatePdf)).toBe(0);

  await openJob(page, story);
  await expect(page.getByText("done, unpaid", { exact: true })).toBeVisible();
  await deskRecordsTheBalance(page, story);
  await deskHandsOver(page, story);
  await checkAccessibility(page);
  const pack = await page.getByRole("link", { name: "Hand-over pack (PDF)" }).getAttribute("href");
  const paper = await page.request.get(pack ?? "");
  expect(paper.headers()["content-type"]).toBe("application/pdf");
  await openJob(page, story);
  await expect(page.getByText("handed over", { exact: true })).toBeVisible();
});

test("a file that only calls itself a certificate is refused, and what was typed is still there", async ({
  page,
}) => {
  await signInAs(page, "desk");
  await page.goto("/jobs?view=in-work&search=Marchetti");
  const jobNumber =
    /\d+/.exec((await page.getByRole("link", { name: /^Job \d+$/ }).textContent()) ?? "")?.[0] ?? "";
  await openHandOver(page, { jobNumber });
  await page
    .getByRole("button", { name: /^Attach: .*[Cc]ertificate/ })
    .first()
    .click();
  const dialog = page.getByRole("dialog");
  await checkAccessibility(page);
  await dialog.getByLabel("File").setInputFiles({
    name: "certificate.pdf",
    mimeType: "application/pdf",
    buffer: Buffer.from("not a PDF"),
  });
  await dialog.getByLabel("Signed by").fill("R. Halvorsen");
  await dialog.getByRole("button", { name: "Attach the file" }).click();
  await expect(dialog.getByText(/Attach a PDF, or a photo/).first()).toBeVisible();
  await expect(dialog.getByLabel("Signed by")).toHaveValue("R. Halvorsen");
});

test("a file and a job of one workshop are nobody else's", async ({ page, openAs, expectConsoleError }) => {
  expectConsoleError(/404/);
  await signInAs(page, "manager");
  await page.goto("/jobs?view=all");
  const href =
    (await page
      .getByRole("link", { name: /^Job \d+$/ })
      .first()
      .getAttribute("href")) ?? "";
  const stranger = await openAs("lena@gulfboost.example");
  await stranger.goto(href);
  await expect(stranger.getByRole("heading", { level: 1 })).not.toContainText("Job");
  const file = await stranger.request.get(`/api/files/${"0".repeat(64)}`);
  expect(file.status()).toBe(404);
  const nobody = await openAs("nobody");
  expect((await nobody.request.get(`/api/files/${"0".repeat(64)}`)).status()).toBe(401);
});

test("a job is stopped and taken up again, and still says why it was stopped", async ({ page }) => {
  await signInAs(page, "manager");
  await page.goto("/jobs?view=waiting&search=Duvall");
  await page.getByRole("link", { name: /^Job \d+$/ }).click();
  await page.getByRole("button", { name: "Stop the job" }).click();
  const stop = page.getByRole("dialog", { name: "Stop this job" });
  await stop.getByLabel("Why it stops").fill("The customer's leave was moved to March.");
  await stop.getByRole("button", { name: "Stop the job" }).click();
  await expect(stop).toBeHidden();
  const stopped = page.getByRole("complementary", { name: /^Stopped / });
  await expect(stopped).toContainText("leave was moved to March");
  await checkAccessibility(page);
  await page.goto("/jobs?view=stopped&search=Duvall");
  await expect(page.getByText("leave was moved to March")).toBeVisible();
  await page.getByRole("link", { name: /^Job \d+$/ }).click();

  await stopped.getByRole("button", { name: "Take the job up again" }).click();
  const resume = page.getByRole("dialog", { name: "Take this job up again" });
  await resume.getByLabel("What has changed").fill("soon");
  await resume.getByRole("button", { name: "Take the job up again" }).click();
  await expect(resume.getByText(/^Say in at least 10 characters what has changed/).first()).toBeVisible();
  await checkAccessibility(page);
  await resume.getByLabel("What has changed").fill("Leave granted after all, in time.");
  await resume.getByRole("button", { name: "Take the job up again" }).click();
  await expect(resume).toBeHidden();
  await expect(page.getByText("waiting for its booking", { exact: true })).toBeVisible();
  await expect(page.getByRole("complementary", { name: /^Was stopped / })).toContainText(
    "leave was moved to March",
  );
  await expect(page.getByText("Taken up again: Leave granted after all, in time.")).toBeVisible();
});
