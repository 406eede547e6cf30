import { expect, type Locator, type Page } from "@playwright/test";

/** What the stages of the story hand along about the job. */
export type JobStory = {
  jobNumber?: string;
  /** The day on which the work starts, as ISO 8601 has it. */
  workDay?: string;
  hoist?: string;
  technician?: string;
};

/** A one-page PDF: enough for its bytes to say what it is (ISO 32000-2, 7.5.2). */
export const certificatePdf = Buffer.from(
  "%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n",
);

const jobHeading = (story: JobStory) => new RegExp(`^Job ${story.jobNumber}: `);

/** The manager tries to book before anything is ready, and is told every unmet point. */
export async function managerIsToldWhatIsMissing(
  manager: Page,
  story: JobStory,
  missing: readonly RegExp[],
): Promise<void> {
  await manager.goto("/plan");
  await manager.getByRole("button", { name: new RegExp(`^Book Job ${story.jobNumber} `) }).click();
  const form = bookingForm(manager, story);
  await fillBlock(
    manager,
    form,
    "Block 1: hoist",
    story.hoist ?? "Hoist 3",
    workTime(story, "08:00", "16:00"),
  );
  await form.getByRole("button", { name: "Book this time" }).click();
  const refusal = form.getByRole("alert");
  await expect(refusal).toContainText("Not booked:");
  for (const point of missing) await expect(refusal.getByText(point)).toBeVisible();
}

/** The manager (or stores) opens what has come and counts it against the kit list. */
export async function managerCountsTheParts(manager: Page, story: JobStory): Promise<void> {
  await openJob(manager, story);
  const form = manager.getByRole("form", { name: "Count the parts" });
  await form.getByText("Everything is here").click();
  await form.getByRole("button", { name: "Record the count" }).click();
  await expect(manager.getByRole("list", { name: "Counts" }).getByText("Counted complete.")).toBeVisible();
}

/** Hoist, technician and dyno in one step; the job is booked. */
export async function managerBooksTheJob(manager: Page, story: JobStory): Promise<void> {
  await openJob(manager, story);
  const form = bookingForm(manager, story);
  const technician = story.technician ?? "Tilda Brennock";
  await fillBlock(
    manager,
    form,
    "Block 1: hoist",
    story.hoist ?? "Hoist 3",
    workTime(story, "08:00", "16:00"),
  );
  await fillBlock(manager, form, "Block 2: technician", technician, workTime(story, "08:00", "16:00"));
  await fillBlock(manager, form, "Block 3: dyno", "Hub dyno", workTime(story, "13:00", "16:00"));
  await form.getByRole("button", { name: "Book this time" }).click();
  const bookings = manager.getByRole("list", { name: "Bookings" });
  await expect(bookings.getByRole("listitem")).toHaveCount(3);
  await expect(manager.getByText("every point is met")).toBeVisible();
  await expect(manager.getByText("booked", { exact: true })).toBeVisible();
}

/** The same hoist at the same time a second time: the database refuses, and the reader is told who holds it. */
export async function secondBookingIsRefused(manager: Page, story: JobStory): Promise<void> {
  await openJob(manager, story);
  const form = bookingForm(manager, story);
  const hoist = story.hoist ?? "Hoist 3";
  await fillBlock(manager, form, "Block 1: hoist", hoist, workTime(story, "10:00", "12:00"));
  await form.getByRole("button", { name: "Book this time" }).click();
  const taken = new RegExp(`${hoist} is taken .* by job ${story.jobNumber} `);
  await expect(form.getByRole("alert").getByText(taken)).toBeVisible();
}

/** The hand-over page lists what is open, and handing over is refused with every point. */
export async function deskFindsTheHandOverBlocked(
  desk: Page,
  story: JobStory,
  open: readonly RegExp[],
): Promise<void> {
  await openHandOver(desk, story);
  const points = desk.getByRole("list", { name: "Open points" });
  for (const point of open) await expect(points.getByText(point)).toBeVisible();
  await fillHandOver(desk, story);
  const form = desk.getByRole("form", { name: "Hand over the vehicle" });
  await form.getByRole("button", { name: "Hand over the vehicle" }).click();
  await expect(form.getByRole("alert")).toContainText("Not handed over:");
}

/** The certificate of the licensed signatory is attached to its obligation. */
export async function deskAttachesTheCertificate(desk: Page, story: JobStory): Promise<void> {
  await openHandOver(desk, story);
  const obligations = desk.getByRole("list", { name: "Obligations" });
  await obligations
    .getByRole("button", { name: /^Attach: .*[Cc]ertificate/ })
    .first()
    .click();
  const dialog = desk.getByRole("dialog");
  await dialog
    .getByLabel("File")
    .setInputFiles({ name: "certificate.pdf", mimeType: "application/pdf", buffer: certificatePdf });
  await dialog.getByLabel("Signed by").fill("R. Halvorsen, licensed signatory");
  await dialog.getByRole("button", { name: "Attach the file" }).click();
  await expect(dialog).toBeHidden();
  await expect(obligations.getByRole("link", { name: "certificate.pdf" })).toBeVisible();
}

/** Whatever else still wants a file before the keys: one after another, each with what it asks for. */
export async function deskAttachesTheOtherPapers(desk: Page, story: JobStory): Promise<void> {
  await openHandOver(desk, story);
  const points = desk.getByRole("list", { name: "Open points" });
  const attach = desk.getByRole("list", { name: "Obligations" }).getByRole("button", { name: /^Attach: / });
  for (const title of await attach.evaluateAll((buttons) =>
    buttons.map((button) => button.ariaLabel ?? ""),
  )) {
    const name = title.replace(/^Attach: /, "");
    if ((await points.getByText(name).count()) === 0) continue;
    await desk.getByRole("button", { name: title, exact: true }).click();
    const dialog = desk.getByRole("dialog");
    await dialog
      .getByLabel("File")
      .setInputFiles({ name: "report.pdf", mimeType: "application/pdf", buffer: certificatePdf });
    const signed = dialog.getByLabel("Signed by");
    if (await signed.isVisible()) await signed.fill("Marek Oduya");
    await dialog.getByRole("button", { name: "Attach the file" }).click();
    await expect(dialog).toBeHidden();
  }
}

/** The floor says that the work is done; what is still open keeps the vehicle from the road. */
export async function technicianDeclaresTheWorkDone(technician: Page, story: JobStory): Promise<void> {
  await openJob(technician, story);
  await technician.getByRole("button", { name: "Work is done" }).click();
  await expect(technician.getByText("done, not for road use", { exact: true })).toBeVisible();
}

/** The rest of the money comes in and is recorded on the quote. */
export async function deskRecordsTheBalance(desk: Page, story: JobStory): Promise<void> {
  await openHandOver(desk, story);
  const open = (await desk.getByText(/^Balance not paid: /).textContent()) ?? "";
  await openJob(desk, story);
  await desk.getByRole("link", { name: "Record a payment" }).click();
  const form = desk.getByRole("form", { name: "Record the balance" });
  await form.getByLabel("Amount received").fill(/\$([\d,.]+) of/.exec(open)?.[1] ?? "");
  await form.getByRole("button", { name: "Record the balance" }).click();
  await expect(form).toBeHidden();
}

/** Everything is met: the keys change hands, and the pack can be printed. */
export async function deskHandsOver(desk: Page, story: JobStory): Promise<void> {
  await openHandOver(desk, story);
  await expect(desk.getByText("Nothing holds this vehicle back.")).toBeVisible();
  await fillHandOver(desk, story);
  const form = desk.getByRole("form", { name: "Hand over the vehicle" });
  await form.getByRole("button", { name: "Hand over the vehicle" }).click();
  await expect(desk.getByRole("heading", { name: "Handed over" })).toBeVisible();
  await expect(desk.getByRole("link", { name: "Hand-over pack (PDF)" })).toBeVisible();
}

export async function openJob(page: Page, story: JobStory): Promise<void> {
  await page.goto(`/jobs?view=all&search=${story.jobNumber}`);
  await page.getByRole("link", { name: `Job ${story.jobNumber}`, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: jobHeading(story) })).toBeVisible();
}

export async function openHandOver(page: Page, story: JobStory): Promise<void> {
  await openJob(page, story);
  await page.getByRole("link", { name: "Hand-over", exact: true }).click();
  const heading = new RegExp(`^Hand-over of job ${story.jobNumber}: `);
  await expect(page.getByRole("heading", { level: 1, name: heading })).toBeVisible();
}

/** A weekday two weeks ahead, counted from the day that the workshop's clock shows. */
export function workDayAhead(now: Date, days = 14): string {
  const today = new Intl.DateTimeFormat("sv-SE", { timeZone: "Australia/Adelaide" }).format(now);
  const day = new Date(`${today}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + days);
  while (day.getUTCDay() === 0 || day.getUTCDay() === 6) day.setUTCDate(day.getUTCDate() + 1);
  return day.toISOString().slice(0, 10);
}

type WorkTime = { readonly from: string; readonly to: string };

function workTime(story: JobStory, from: string, to: string): WorkTime {
  const day = story.workDay ?? "";
  return { from: `${day}T${from}`, to: `${day}T${to}` };
}

function bookingForm(page: Page, story: JobStory): Locator {
  return page.getByRole("form", { name: new RegExp(`^Book time for Job ${story.jobNumber}\\b`) });
}

async function fillBlock(
  page: Page,
  form: Locator,
  name: string,
  resource: string,
  time: WorkTime,
): Promise<void> {
  const block = form.getByRole("group", { name, exact: true });
  await block.getByRole("button").first().click();
  await page.getByRole("option", { name: new RegExp(`^${resource}`) }).click();
  await fillTime(page, block.getByRole("group", { name: "From" }), time.from);
  await fillTime(page, block.getByRole("group", { name: "To" }), time.to);
}

/** Types day and time segment by segment, as a person does: 08 12 2026 09 00. */
async function fillTime(page: Page, field: Locator, local: string): Promise<void> {
  const [, year, month, day, hour, minute] = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/.exec(local) ?? [];
  const parts = [
    ["day", day],
    ["month", month],
    ["year", year],
    ["hour", hour],
    ["minute", minute],
  ] as const;
  for (const [name, digits] of parts) {
    await field.getByRole("spinbutton", { name: new RegExp(`^${name}`) }).focus();
    await page.keyboard.type(digits ?? "");
  }
}

async function fillHandOver(desk: Page, story: JobStory): Promise<void> {
  const form = desk.getByRole("form", { name: "Hand over the vehicle" });
  const least = (await form.getByText(/^At least [\d,]+ km/).textContent()) ?? "";
  await form.getByLabel("Odometer").fill(String(Number(least.replace(/\D/g, "")) + 12));
  await form.getByLabel("Keys handed back").fill("2");
  const day = story.workDay ?? workDayAhead(new Date(), 30);
  const [year, month, date] = day.split("-");
  const field = form.getByRole("group", { name: /visit/ });
  for (const [name, digits] of [
    ["day", date],
    ["month", month],
    ["year", year],
  ] as const) {
    await field.getByRole("spinbutton", { name: new RegExp(`^${name}`) }).focus();
    await desk.keyboard.type(digits ?? "");
  }
}
