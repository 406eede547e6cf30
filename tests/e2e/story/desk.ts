import { expect, type Page } from "@playwright/test";

/** What the desk's part of the story needs and hands along. */
export type DeskStory = {
  customerName: string;
  phone: string;
  vin: string;
  plate: string;
  customerUrl?: string;
  vehicleUrl?: string;
  buildUrl?: string;
};

/** The desk adds a customer who is not known yet. */
export async function deskAddsTheCustomer(desk: Page, story: DeskStory): Promise<void> {
  await desk.goto("/customers");
  await desk.getByRole("link", { name: "New customer" }).first().click();
  await expect(desk.getByRole("heading", { level: 1, name: "New customer" })).toBeVisible();
  await desk.getByRole("textbox", { name: "Name" }).fill(story.customerName);
  await desk.getByRole("textbox", { name: "Telephone" }).fill(story.phone);
  await desk.getByRole("button", { name: "Add the customer" }).click();
  await expect(desk.getByRole("heading", { level: 1, name: story.customerName })).toBeVisible();
  story.customerUrl = desk.url();
}

/** On the customer's page: adds a Ridgewold by its VIN, with odometer, fuel and use. */
export async function deskAddsTheVehicle(desk: Page, story: DeskStory): Promise<void> {
  await desk.getByRole("link", { name: "New vehicle" }).click();
  await expect(desk.getByRole("heading", { level: 1, name: "New vehicle" })).toBeVisible();
  await desk.getByRole("textbox", { name: "VIN" }).fill(story.vin);
  await expect(desk.getByText(/check digit/i)).toBeVisible();
  await choose(desk, "Model", "Kerrow Ridgewold 5.7");
  await desk.getByRole("textbox", { name: "Plate" }).fill(story.plate);
  await desk.getByRole("textbox", { name: "Odometer" }).fill("24,310");
  await choose(desk, "Octane", "98 RON");
  await tick(desk, "Towing");
  await desk.getByRole("button", { name: "Add the vehicle" }).click();
  await expect(desk.getByRole("heading", { level: 2, name: "Start a build" })).toBeVisible();
  story.vehicleUrl = desk.url();
}

/** On the vehicle's page: starts a build from nothing. */
export async function deskStartsTheBuild(desk: Page, story: DeskStory): Promise<void> {
  await desk
    .getByRole("textbox", { name: "What the owner wants" })
    .fill("tow 3.0 t, more pull in the middle");
  await desk.getByRole("button", { name: "Start the build" }).click();
  await expect(desk.getByRole("region", { name: "Air" })).toBeVisible();
  story.buildUrl = desk.url();
}

/** On the build sheet: chooses the larger blower and is told at once what it asks for. */
export async function deskChoosesTheBlower(desk: Page): Promise<void> {
  await addItem(desk, "air", "2.4 L");

  const fuel = desk.getByRole("list", { name: "Missing or short in Fuel" });
  await expect(fuel).toContainText("High-pressure fuel pump: short by 9 % (asked 146 of 133 kg/h)");
  await expect(fuel).toContainText("At full load the engine burns more than the high-pressure pump delivers");
  await expect(
    fuel.getByRole("button", { name: /^Add all 4 High-pressure fuel pump upgrade.*\$[\d,.]+ · [\d.]+ h/ }),
  ).toBeVisible();

  for (const missing of [
    "Missing: Boosted engine calibration",
    "Missing: Spark plugs two steps colder, set of 8",
    "Missing: Charge cooler kit, twin fan",
    "Missing: Pre-build inspection with baseline",
  ]) {
    const point = desk.getByRole("listitem").filter({ hasText: missing });
    await expect(point.getByRole("button", { name: /^Add .*\$[\d,.]+ · / })).toBeVisible();
  }
  const chain = desk.getByRole("figure", { name: /Asked against given/ });
  await expect(chain).toContainText("Weakest link: High-pressure fuel pump: short by 9 %");
  await expect(chain).toContainText("“High-pressure fuel pump upgrade” leaves 18 % headroom.");
}

/** On the build sheet: mends the pump with one click, takes the package, and adds what is still missing. */
export async function deskCompletesTheBuild(desk: Page): Promise<void> {
  const fuel = desk.getByRole("region", { name: "Fuel" });
  await fuel.getByRole("button", { name: /^Add all 4 High-pressure fuel pump upgrade/ }).click();
  const chosen = desk.getByRole("list", { name: "Chosen in Fuel" });
  await expect(chosen).toContainText("High-pressure fuel pump upgrade");
  await expect(chosen).toContainText("High-pressure pipes and injector seals");
  await expect(fuel.getByText("short by")).toHaveCount(0);

  await choose(desk, "Package", "Long Grade 2.4");
  await expect(desk.getByText("325–375 kW at the hubs")).toBeVisible();
  await expect(desk.getByText("not a forecast")).toBeVisible();
  await desk.getByRole("button", { name: /^(Add everything that is missing|Take the cheapest)/ }).click();
  await expect(desk.getByText("Nothing is missing.")).toBeVisible();
  await expect(desk.getByText("shared access counted once")).toBeVisible();
}

/** A technician records a pre-build inspection that passes. */
export async function technicianInspects(technician: Page, story: DeskStory): Promise<void> {
  await technician.goto(story.buildUrl ?? "");
  await technician.getByRole("button", { name: "Record an inspection" }).click();
  const form = technician.getByRole("dialog", { name: "Pre-build inspection" });
  await form.getByRole("textbox", { name: "Leak-down, worst" }).fill("7");
  await form.getByRole("textbox", { name: "Leak-down, spread" }).fill("3");
  await form.getByRole("textbox", { name: "Fuel trim, worst" }).fill("-4.5");
  await tick(technician, "The cooling system is sound");
  await form.getByRole("button", { name: "Record" }).click();
  await expect(form).toBeHidden();
  await expect(technician.getByText("Passed", { exact: true })).toBeVisible();
}

/** From the build sheet to the draft of its quote. */
export async function deskQuotesTheBuild(desk: Page, story: DeskStory): Promise<void> {
  if (desk.url() !== story.buildUrl) await desk.goto(story.buildUrl ?? "");
  await desk.getByRole("button", { name: "Quote this" }).click();
  await expect(desk.getByRole("heading", { level: 1, name: /^Quote \d+/ })).toBeVisible();
}

/** Adds to a system of the sheet the item whose name holds what is typed. */
export async function addItem(page: Page, system: string, typed: string): Promise<void> {
  const chooser = page.getByRole("combobox", { name: `Add to ${system}` });
  // A page that scrolls closes an open list: first to its place, then type.
  await chooser.scrollIntoViewIfNeeded();
  await chooser.click();
  await chooser.pressSequentially(typed);
  const options = page.getByRole("option");
  // While the list is still being cut down to what was typed, what is pressed may be gone before the press ends.
  await expect(options.filter({ hasNotText: new RegExp(typed, "i") })).toHaveCount(0);
  await options
    .filter({ hasText: new RegExp(typed, "i") })
    .first()
    .click();
}

/** Picks an entry of a list by its beginning. */
export async function choose(page: Page, list: string, entry: string): Promise<void> {
  await page.getByRole("button", { name: new RegExp(`${list}`) }).click();
  const options = page.getByRole("option");
  await options
    .filter({ hasText: new RegExp(`^${entry.replaceAll(".", "\\.")}(?! Lift)`) })
    .first()
    .click();
}

/** Ticks a box by its words: the box itself is drawn, and its words are what people press. */
async function tick(page: Page, words: string): Promise<void> {
  const box = page.getByRole("checkbox", { name: words });
  await page.getByText(words, { exact: true }).click();
  await expect(box).toBeChecked();
}
