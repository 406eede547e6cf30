import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import {
  addItem,
  type DeskStory,
  deskAddsTheCustomer,
  deskAddsTheVehicle,
  deskChoosesTheBlower,
  deskCompletesTheBuild,
  deskQuotesTheBuild,
  deskStartsTheBuild,
  technicianInspects,
} from "./story/desk";

/** A vehicle that no other test knows. The maker code is nobody's. */
let made = 0;
function aStory(): DeskStory {
  made += 1;
  const serial = `${Date.now() % 100_000}`.padStart(5, "0") + made;
  return {
    customerName: `Ottoline Farrow ${serial}`,
    phone: `08 5550 ${serial.slice(-4)}`,
    vin: `7Z9DESK0${made % 10}T${"0".repeat(7 - serial.length)}${serial}`,
    plate: `D${serial.slice(-3)} ${made}X`,
  };
}

test("a build from the first call to a complete sheet", async ({ page, openAs }) => {
  const story = aStory();
  await signInAs(page, "desk");
  await page.goto("/");
  await expect(page.getByRole("heading", { level: 1, name: "Today" })).toBeVisible();
  await checkAccessibility(page);

  await deskAddsTheCustomer(page, story);
  await checkAccessibility(page);
  await deskAddsTheVehicle(page, story);
  await checkAccessibility(page);
  await deskStartsTheBuild(page, story);
  await checkAccessibility(page);
  await deskChoosesTheBlower(page);
  await checkAccessibility(page);

  const technician = await openAs("technician");
  await technicianInspects(technician, story);
  await checkAccessibility(technician);

  await page.reload();
  await expect(page.getByText("Missing: Pre-build inspection with baseline")).toHaveCount(0);
  await deskCompletesTheBuild(page);
  await page.goto(`${story.buildUrl}/print`);
  await expect(page.getByRole("heading", { level: 1, name: /^Build sheet \d+$/ })).toBeVisible();
  await checkAccessibility(page);
  await deskQuotesTheBuild(page, story);
});

test("undo takes the last step back and redo does it again, by key and by button", async ({ page }) => {
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await deskStartsTheBuild(page, story);
  await page.getByRole("combobox", { name: "Add to exhaust" }).fill("cat");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  const chosen = page.getByRole("list", { name: "Chosen in Exhaust" });
  await expect(chosen).toContainText("Cat-back exhaust");
  await page.getByRole("button", { name: /^Undo: Cat-back exhaust added$/ }).click();
  await expect(chosen).toHaveCount(0);
  await page.getByRole("heading", { level: 1 }).click();
  await page.keyboard.press("Control+y");
  await expect(chosen).toContainText("Cat-back exhaust");

  await page.getByRole("button", { name: /Cat-back exhaust, change the quantity/ }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("textbox", { name: "Quantity" }).fill("2");
  await dialog.getByRole("button", { name: "Save" }).click();
  await expect(chosen).toContainText("2 pieces");
  await page.getByRole("button", { name: "Undo: Quantity of Cat-back exhaust changed" }).click();
  await expect(chosen).not.toContainText("2 pieces");
  await page.getByRole("heading", { level: 1 }).click();
  await page.keyboard.press("Control+y");
  await expect(chosen).toContainText("2 pieces");
  await page.keyboard.press("Control+z");
  await expect(chosen).not.toContainText("2 pieces");
  await page.keyboard.press("Control+z");
  await expect(chosen).toHaveCount(0);
});

test("of two people at one sheet the second is told, sees the first's change, and loses nothing", async ({
  page,
  openAs,
}) => {
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await deskStartsTheBuild(page, story);
  const manager = await openAs("manager");
  await manager.goto(story.buildUrl ?? "");
  await expect(manager.getByRole("region", { name: "Exhaust" })).toBeVisible();

  await addItem(page, "exhaust", "Cat-back");
  await expect(page.getByRole("list", { name: "Chosen in Exhaust" })).toBeVisible();

  await addItem(manager, "appearance", "Dark trim");
  await expect(
    manager.getByRole("alert").filter({ hasText: "Somebody else changed this build sheet" }),
  ).toBeVisible();
  await expect(manager.getByRole("list", { name: "Chosen in Exhaust" })).toContainText("Cat-back");
  await checkAccessibility(manager);
  await manager.getByRole("button", { name: "Do it on the newer sheet" }).click();
  await expect(manager.getByRole("list", { name: "Chosen in Appearance" })).toBeVisible();
  await expect(manager.getByRole("list", { name: "Chosen in Exhaust" })).toBeVisible();
});

test("what cannot be is refused with a sentence, and what was typed stays", async ({ page }) => {
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  await page.getByRole("link", { name: "New vehicle" }).click();
  await page.getByRole("textbox", { name: "VIN" }).fill("7Z9DESK00T00000O1");
  await page.getByRole("textbox", { name: "Plate" }).fill(story.plate);
  await page.getByRole("button", { name: "Add the vehicle" }).click();
  await expect(page.getByRole("alert").first()).toContainText(/Choose the model|Enter the odometer/);
  await expect(page.getByRole("textbox", { name: "Plate" })).toHaveValue(story.plate);
  await page.goto(story.customerUrl ?? "");
  await deskAddsTheVehicle(page, story);

  await test.step("the same VIN again", async () => {
    await page.goto(story.customerUrl ?? "");
    await page.getByRole("link", { name: "New vehicle" }).click();
    await page.getByRole("textbox", { name: "VIN" }).fill(story.vin);
    await expect(page.getByText("This vehicle is here already:")).toBeVisible();
  });

  await test.step("a day in the past", async () => {
    await page.goto(story.vehicleUrl ?? "");
    await page.getByRole("textbox", { name: "What the owner wants" }).fill("ready last year");
    await page.getByRole("spinbutton", { name: /day/ }).click();
    await page.keyboard.type("01012020");
    await page.getByRole("button", { name: "Start the build" }).click();
    await expect(page.getByRole("alert").first()).toContainText("The date it is wanted by has passed");
    await expect(page.getByRole("textbox", { name: "What the owner wants" })).toHaveValue("ready last year");
  });

  await test.step("a quantity below one", async () => {
    await page.goto(story.vehicleUrl ?? "");
    await deskStartsTheBuild(page, story);
    await addItem(page, "exhaust", "Cat-back");
    await page.getByRole("button", { name: /Cat-back exhaust, change the quantity/ }).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("textbox", { name: "Quantity" }).fill("-2");
    await dialog.getByRole("button", { name: "Save" }).click();
    await expect(dialog.getByRole("alert")).toContainText("A quantity is at least 1");
    await expect(dialog.getByRole("textbox", { name: "Quantity" })).toHaveValue("-2");
  });
});

test("a customer edited in two windows: the second is told and keeps the words", async ({ page, openAs }) => {
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  const manager = await openAs("manager");
  await manager.goto(story.customerUrl ?? "");
  await page.getByRole("textbox", { name: "Address" }).fill("1 First Street");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await manager.getByRole("textbox", { name: "Address" }).fill("2 Second Street");
  await manager.getByRole("button", { name: "Save" }).click();
  await expect(manager.getByRole("alert").first()).toContainText("Somebody else changed this customer");
  await expect(manager.getByRole("textbox", { name: "Address" })).toHaveValue("2 Second Street");
  await expect(manager.getByRole("definition").filter({ hasText: "1 First Street" })).toBeVisible();
});

test("every list and form of the desk can be used by everybody", async ({ page }) => {
  await signInAs(page, "desk");
  for (const [url, title] of [
    ["/customers", "Customers"],
    ["/customers?q=nobody%20is%20called%20this", "Customers"],
    ["/customers/new", "New customer"],
    ["/vehicles/new", "New vehicle"],
    ["/builds", "Builds"],
    ["/builds?q=nothing%20is%20called%20this", "Builds"],
  ] as const) {
    await page.goto(url);
    await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
    await checkAccessibility(page);
  }
});

test("anything is found from anywhere by keyboard", async ({ page }) => {
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await page.goto("/builds");
  await expect(page.getByRole("heading", { level: 1, name: "Builds" })).toBeVisible();
  await checkAccessibility(page);
  await page.getByRole("heading", { level: 1 }).click();
  await page.keyboard.press("/");
  await page.keyboard.type(story.plate);
  await expect(page.getByRole("option", { name: new RegExp(story.plate) })).toBeVisible();
  await checkAccessibility(page);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(story.vehicleUrl ?? "");

  await page.keyboard.press("Control+k");
  await page.keyboard.type("9QX 9QX");
  await expect(page.getByRole("option", { name: /New vehicle with plate 9QX 9QX/ })).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("textbox", { name: "Plate" })).toHaveValue("9QX 9QX");
  await checkAccessibility(page);
});

test("a technician starts on the floor, reads the sheet, and changes nothing on it", async ({
  page,
  openAs,
}) => {
  const story = aStory();
  const desk = await openAs("desk");
  await deskAddsTheCustomer(desk, story);
  await deskAddsTheVehicle(desk, story);
  await deskStartsTheBuild(desk, story);
  await signInAs(page, "technician");
  await page.goto("/today");
  await expect(page).toHaveURL(/\/floor/);
  await page.goto(story.buildUrl ?? "");
  await expect(page.getByRole("region", { name: "Air" })).toBeVisible();
  await expect(page.getByRole("combobox", { name: "Add to air" })).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Quote this" })).toHaveCount(0);
});

test("another workshop's customer, vehicle and build do not exist", async ({
  page,
  openAs,
  expectConsoleError,
}) => {
  expectConsoleError(/404/);
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await deskStartsTheBuild(page, story);
  const stranger = await openAs("lena@gulfboost.example");
  for (const url of [story.customerUrl, story.vehicleUrl, story.buildUrl]) {
    await stranger.goto(url ?? "");
    await expect(
      stranger.getByRole("heading", { level: 1, name: "There is nothing at this address" }),
    ).toBeVisible();
    await expect(stranger.getByText(story.customerName)).toHaveCount(0);
  }
});

test("on a phone the sheet fits the width, and the chain is a list", async ({ page }) => {
  const story = aStory();
  await signInAs(page, "desk");
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await deskStartsTheBuild(page, story);
  await page.setViewportSize({ width: 390, height: 844 });
  await deskChoosesTheBlower(page);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);
  await checkAccessibility(page);
});
