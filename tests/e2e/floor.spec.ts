import type { Page } from "@playwright/test";
import { demoPassword } from "../../prisma/demo/demo-people";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import { enterStep, fillCheckIn, photoFile, secondPersonSigns, technicianWorksTheCard } from "./story/floor";

const tablet = { width: 1024, height: 768 };
const phone = { width: 390, height: 844 };

test.use({ viewport: tablet });

/** Opens a vehicle's card or check-in from the day of whoever is signed in. */
async function openFromDay(page: Page, plate: string): Promise<void> {
  await page.goto("/floor");
  const job = page.getByRole("listitem").filter({ hasText: plate }).first();
  await job.getByRole("link").first().click();
  await expect(page.getByRole("heading", { level: 1, name: new RegExp(plate) })).toBeVisible();
}

test("a technician takes a vehicle in and works its card, and nothing typed is lost", async ({
  page,
  openAs,
}) => {
  test.slow();
  await signInAs(page, "joss@saltbush.example");
  await page.goto("/floor");
  await expect(page.getByRole("heading", { level: 1, name: "Your day" })).toBeVisible();
  await checkAccessibility(page);

  await openFromDay(page, "2LW 9GH");
  await checkAccessibility(page);
  await page.getByLabel("Condition").fill("Dent in the tailgate.");
  await page.getByLabel("Odometer").fill("76049");
  await page.getByLabel("Keys").fill("2");
  await page.getByRole("button", { name: "Take the vehicle in" }).click();
  const checkIn = page.getByRole("form", { name: "Check in" });
  await expect(checkIn.getByRole("alert")).toContainText("have not been said to the customer yet");
  await fillCheckIn(page, "76049");
  await page.getByRole("button", { name: "Take the vehicle in" }).click();
  await expect(checkIn.getByRole("alert")).toContainText("The last reading was 76,050 km");
  await expect(page.getByLabel("Odometer")).toHaveValue("76049");
  await page.getByLabel("Odometer").fill("76112");
  // Leaving the field takes its refusal away, and what stands below moves up.
  await page.getByLabel("Odometer").press("Tab");
  await page.getByRole("button", { name: "Take the vehicle in" }).click();
  await expect(page.getByRole("heading", { name: "Taken in" })).toBeVisible();
  await expect(page.getByText("76,112 km").first()).toBeVisible();
  await checkAccessibility(page);

  await page.getByRole("link", { name: "Open the job card" }).click();
  await expect(page.getByRole("form", { name: "Enter this step" })).toBeVisible();
  await page.getByRole("button", { name: "Clock on" }).click();
  await expect(page.getByRole("button", { name: "Clock off" })).toBeVisible();
  await enterStep(page);
  await expect(page.getByText(/^Saved at the workshop \d\d:\d\d$/)).toBeVisible();
  await checkAccessibility(page);

  await page.getByRole("button", { name: "Raise a fault" }).click();
  const fault = page.getByRole("dialog", { name: "Raise a fault" });
  await fault.getByLabel("What you found").fill("The tow bar's bolts are a size too small.");
  const tell = fault.getByRole("button", { name: "Tell the desk" });
  // What opens from the floor keeps the floor's size: 52 px, for gloves.
  expect((await tell.boundingBox())?.height).toBeGreaterThanOrEqual(52);
  const noPhoto = { name: "photo.jpg", mimeType: "image/jpeg", buffer: Buffer.from("<p>no photo</p>") };
  await fault.getByLabel("Photo").setInputFiles(noPhoto);
  await tell.click();
  await expect(fault.getByRole("alert")).toContainText("This file is not a photo that the workshop takes.");
  await expect(fault.getByLabel("What you found")).toHaveValue("The tow bar's bolts are a size too small.");
  await fault.getByLabel("Photo").setInputFiles(photoFile);
  await tell.click();
  await expect(fault).toBeHidden();
  await expect(page.getByRole("list", { name: "Faults" })).toContainText("a size too small");

  const desk = await openAs("desk");
  await desk.goto("/today");
  await expect(desk.getByText(/a size too small/)).toBeVisible();

  expect(await technicianWorksTheCard(page)).toBe("end");
  await checkAccessibility(page);
  await page.getByRole("button", { name: "Clock off" }).click();
  await expect(page.getByRole("button", { name: "Clock on" })).toBeVisible();
});

test("a figure outside its limits is a fault; an undone step is open again", async ({ page, openAs }) => {
  await signInAs(page, "joss@saltbush.example");
  await openFromDay(page, "1TK 8HC");
  await page.getByText(/^All \d+ steps$/).click();
  await page
    .getByRole("list", { name: "All steps" })
    .getByRole("button", { name: /Wheel nuts.*133 to 147 N·m$/ })
    .first()
    .click();
  const form = page.getByRole("form", { name: "Enter this step" });
  await form.getByLabel("Torque reached").fill("one hundred");
  await form.getByRole("button", { name: "Done", exact: true }).click();
  await expect(form.getByRole("alert")).toContainText("“one hundred” is not a number");
  await form.getByLabel("Torque reached").fill("180");
  await form.getByRole("button", { name: "Keep it as a fault" }).click();
  await expect(form.getByRole("alert")).toContainText("180 N·m is outside 133 to 147 N·m");
  await expect(form.getByLabel("Torque reached")).toHaveValue("180");
  await form.getByLabel("What you found").fill("Wrench clicked late.");
  await form.getByRole("button", { name: "Keep it as a fault" }).click();
  const faults = page.getByRole("list", { name: "Faults" });
  await expect(faults).toContainText("Reads 180 N·m");

  await page
    .getByRole("button", { name: /180 N·m: outside, a fault$/ })
    .first()
    .click();
  await form.getByLabel("Torque reached").fill("140");
  await form.getByRole("button", { name: "Done", exact: true }).click();
  await expect(faults).toContainText("Settled: Entered again within limits: 140 N·m.");
  await checkAccessibility(page);

  await page
    .getByRole("button", { name: /Wheel nuts.*140 N·m$/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Undo" }).click();
  const undo = page.getByRole("dialog", { name: "Open this step again" });
  await undo.getByLabel("Why").fill("Wheel comes off once more.");
  await checkAccessibility(page);
  await undo.getByRole("button", { name: "Open it again" }).click();
  await expect(form).toBeVisible();

  const manager = await openAs("manager");
  await manager.goto(page.url());
  await manager.getByRole("button", { name: "Settle" }).first().click();
  const settle = manager.getByRole("dialog", { name: "Settle the fault" });
  await settle.getByLabel("How it was settled").fill("Hose renewed, photographed, customer told.");
  await settle.getByRole("button", { name: "Settle it" }).click();
  await expect(manager.getByText(/Settled: Hose renewed/)).toBeVisible();
});

test("nothing crosses a hold point before a second person has signed it", async ({ page }) => {
  test.slow();
  await signInAs(page, "technician");
  await openFromDay(page, "7SV 5NB");
  expect(await technicianWorksTheCard(page)).toBe("hold");
  await checkAccessibility(page);
  await page.getByRole("list", { name: "After" }).getByRole("button").first().click();
  await expect(page.getByText(/^Stop: nothing crosses the hold point/)).toBeVisible();
  await expect(page.getByRole("button", { name: "Done", exact: true })).toHaveCount(0);
  await page.getByRole("button", { name: "Go to the hold point" }).click();

  const form = page.getByRole("form", { name: "Sign the hold point" });
  const sign = async (email: string, password: string) => {
    await form.getByLabel("E-mail of who signs").fill(email);
    await form.getByLabel("Their password").fill(password);
    await form.getByRole("button", { name: "Sign", exact: true }).click();
  };
  await sign("tilda@saltbush.example", demoPassword);
  await expect(form.getByRole("alert")).toContainText("Tilda Brennock did some of the work");
  await sign("joss@saltbush.example", "not the password");
  await expect(form.getByRole("alert")).toContainText("do not match");
  await secondPersonSigns(page, { signer: "joss@saltbush.example" });
  // The device is still the technician's.
  await expect(page.getByRole("button", { name: "Tilda Brennock" })).toBeVisible();
  await expect(page.getByRole("form", { name: "Enter this step" })).toBeVisible();
});

test("what is entered without network stays on the device and goes when it is back", async ({
  page,
  context,
  expectConsoleError,
}) => {
  expectConsoleError(/ERR_INTERNET_DISCONNECTED/);
  await signInAs(page, "technician");
  await page.setViewportSize(phone);
  await openFromDay(page, "7SV 5NB");
  await expect(page.getByRole("form", { name: "Enter this step" })).toBeVisible();
  await checkAccessibility(page);
  await context.setOffline(true);
  await enterStep(page);
  await expect(page.getByText(/^1 entry on this device, not yet at the workshop\./)).toBeVisible();
  await checkAccessibility(page);
  await context.setOffline(false);
  await expect(page.getByText(/^Saved at the workshop/)).toBeVisible();
  await expect(page.getByText(/on this device/)).toHaveCount(0);
  await page.reload();
  await expect(page.getByText(/^All entries are at the workshop/)).toBeVisible();
});

test("the card prints with a box for every step, and a manager looks at anybody's day", async ({ page }) => {
  await signInAs(page, "manager");
  await page.goto("/floor");
  await page.getByRole("link", { name: "Tilda Brennock" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Tilda Brennock's day" })).toBeVisible();
  await checkAccessibility(page);
  await openFromDay(page, "7SV 5NB");
  await page.getByRole("link", { name: "Print" }).click();
  await expect(page.getByRole("heading", { level: 1, name: /^Job card \d+: 7SV 5NB$/ })).toBeVisible();
  await expect(page.getByRole("row", { name: /HOLD POINT/ }).first()).toBeVisible();
  await checkAccessibility(page);
});

test("a manager sets a clock right, and the entry says why", async ({ page }) => {
  await signInAs(page, "manager");
  await page.goto("/jobs?view=done&search=Kessell");
  await page.getByRole("link", { name: /^Job \d+$/ }).click();
  const entries = page.getByRole("list", { name: "Clock entries" });
  const entry = entries.getByRole("listitem").last();
  await expect(entry).toContainText(/12:32 to 15:15, 2\sh\s43\smin/);
  await entry.getByRole("button", { name: /^Correct the clock: Joss Varga/ }).click();
  const dialog = page.getByRole("dialog", { name: "Correct the clock" });
  const ended = dialog.getByRole("group", { name: "The work ended" });
  const typeTime = async (hour: string, minute: string) => {
    await ended.getByRole("spinbutton", { name: /^hour/ }).focus();
    await page.keyboard.type(hour);
    await ended.getByRole("spinbutton", { name: /^minute/ }).focus();
    await page.keyboard.type(minute);
  };
  await typeTime("12", "15");
  await dialog.getByLabel("Why it is corrected").fill("Stopped for a delivery, forgot the clock.");
  await dialog.getByRole("button", { name: "Correct the clock" }).click();
  await expect(dialog.getByText(/^This work began .*Enter a time after that\.$/).first()).toBeVisible();
  await checkAccessibility(page);
  await expect(dialog.getByLabel("Why it is corrected")).toHaveValue(/delivery/);
  await typeTime("15", "02");
  await dialog.getByRole("button", { name: "Correct the clock" }).click();
  await expect(dialog).toBeHidden();
  await expect(entry).toContainText(/12:32 to 15:02, 2\sh\s30\smin/);
  await expect(entry).toContainText("Corrected by Marek Oduya: Stopped for a delivery, forgot the clock.");
  await checkAccessibility(page);
});

test("a job that is not there, or not ours, is not found; the desk has no floor", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "technician");
  await page.goto("/floor/jobs/00000000-0000-4000-8000-000000000000");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.getByRole("form")).toHaveCount(0);
  const desk = await openAs("desk");
  await desk.goto("/floor");
  await expect(desk.getByText(/^Your role does not include this/)).toBeVisible();
});
