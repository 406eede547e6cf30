import type { Page } from "@playwright/test";
import { checkAccessibility, expect, test } from "./fixtures";
import {
  addItem,
  type DeskStory,
  deskAddsTheCustomer,
  deskAddsTheVehicle,
  deskStartsTheBuild,
} from "./story/desk";

function aStory(): DeskStory {
  const serial = `${Date.now() % 1_000_000}`.padStart(6, "0");
  return {
    customerName: `Ilse Varga ${serial}`,
    phone: `08 5550 ${serial.slice(-4)}`,
    vin: `7Z9CATL08T0${serial}`,
    plate: `C${serial.slice(-3)} 4AT`,
  };
}

async function chooseItem(page: Page, where: string, typed: string, name: RegExp): Promise<void> {
  const field = page.getByRole("combobox", { name: where });
  await field.scrollIntoViewIfNeeded();
  await field.click();
  await field.pressSequentially(typed);
  await page.getByRole("option", { name }).first().click();
}

/** Puts a rule together: a build with the winch and the dark trim needs the alternator upgrade. */
async function ownerDraftsTheRule(owner: Page, title: string): Promise<void> {
  await owner.goto("/catalogue?part=rule");
  await expect(owner.getByRole("heading", { level: 1, name: "Catalogue" })).toBeVisible();
  await checkAccessibility(owner);
  const draft = owner
    .getByRole("combobox", { name: "In which draft" })
    .or(owner.getByLabel("In which draft"));
  if ((await draft.count()) > 0) {
    await owner.getByRole("button", { name: /In which draft/ }).click();
    await owner.getByRole("option", { name: "A new draft" }).click();
  }
  await owner.getByRole("textbox", { name: "What the draft is for" }).fill(title);
  await owner.getByRole("button", { name: "Add to the draft" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: "New rule" })).toBeVisible();

  await owner.getByRole("button", { name: "When the build has: add an item" }).click();
  await chooseItem(owner, "When the build has, line 1: item", "winch, high", /^Winch, high mount/);
  await owner.getByRole("button", { name: "When the build has: add an item" }).click();
  await chooseItem(owner, "When the build has, line 2: item", "dark trim", /^Dark trim/);
  await owner.getByRole("button", { name: "it needs: add an item" }).click();
  await owner.getByRole("button", { name: "Save in the draft" }).click();
  await expect(owner.getByRole("alert").first()).toContainText("Choose an item for each line");
  await chooseItem(owner, "it needs, line 1: item", "alternator upgrade", /^Alternator upgrade/);
  await expect(owner.getByRole("status", { name: "The rule in one sentence" })).toContainText(
    "When the build has “Winch, high mount” and “Dark trim: grille, badges, mirror caps”, it needs “Alternator upgrade, 60 A more”.",
  );
  await owner.getByRole("textbox", { name: "Why" }).fill(`${title}: the winch draws more than is spare.`);
  await checkAccessibility(owner);
  await owner.getByRole("button", { name: "Save in the draft" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: `Draft: ${title}` })).toBeVisible();
}

test("a rule is put together, tried on an open build, published, seen on the build sheet, and gone back from", async ({
  openAs,
}) => {
  const story = aStory();
  const desk = await openAs("desk");
  await deskAddsTheCustomer(desk, story);
  await deskAddsTheVehicle(desk, story);
  await deskStartsTheBuild(desk, story);
  await addItem(desk, "appearance", "Winch, high");
  await expect(desk.getByRole("list", { name: "Chosen in Appearance" })).toContainText("Winch");
  await addItem(desk, "appearance", "Dark trim");
  await expect(desk.getByRole("list", { name: "Chosen in Appearance" })).toContainText("Dark trim");
  await expect(desk.getByText("Missing: Alternator upgrade, 60 A more")).toHaveCount(0);

  const owner = await openAs("owner");
  const title = `Winch rule ${story.plate}`;
  await ownerDraftsTheRule(owner, title);
  const tried = owner.getByRole("region", { name: "Tried before it is published" }).or(owner.locator("main"));
  await expect(tried.getByText("Would gain: Missing: Alternator upgrade, 60 A more").first()).toBeVisible();
  await expect(
    owner.getByText(/build not quoted yet would gain|builds not quoted yet would gain/),
  ).toBeVisible();
  await checkAccessibility(owner);
  await desk.reload();
  await expect(desk.getByText("Missing: Alternator upgrade, 60 A more")).toHaveCount(0);

  await owner.getByRole("button", { name: "Publish now" }).click();
  await expect(
    owner.getByRole("heading", { level: 1, name: new RegExp(`^Version \\d+: ${title}`) }),
  ).toBeVisible();
  const heading = await owner.getByRole("heading", { level: 1 }).textContent();
  const number = Number(/\d+/.exec(heading ?? "")?.[0]);
  await desk.reload();
  await expect(desk.getByText("Missing: Alternator upgrade, 60 A more").first()).toBeVisible();

  await owner.goto("/catalogue/versions");
  await checkAccessibility(owner);
  const back = number === 1 ? "Go back to how it began" : `Go back to version ${number - 1}`;
  await owner.getByRole("button", { name: back }).click();
  await expect(owner.getByRole("heading", { level: 1, name: /^Draft: Back to/ })).toBeVisible();
  await expect(owner.getByText("rule, taken out").first()).toBeVisible();
  await owner.getByRole("button", { name: "Publish now" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: /^Version \d+: Back to/ })).toBeVisible();
  await desk.reload();
  await expect(desk.getByRole("list", { name: "Chosen in Appearance" })).toBeVisible();
  await expect(desk.getByText("Missing: Alternator upgrade, 60 A more")).toHaveCount(0);
});

test("a price is drafted, refused at its field while it is no amount, waits for a day, and is taken back", async ({
  openAs,
}) => {
  const manager = await openAs("manager");
  await manager.goto("/catalogue?q=slim+pair");
  await manager.getByRole("link", { name: "Driving lamps, slim pair" }).click();
  await expect(manager.getByRole("heading", { level: 1, name: "Driving lamps, slim pair" })).toBeVisible();
  await checkAccessibility(manager);
  await manager.goto("/catalogue/versions");
  await manager.getByRole("textbox", { name: "What the draft is for" }).fill("Lamps next week");
  await manager.getByRole("button", { name: "Start the draft" }).click();
  await expect(manager.getByRole("heading", { level: 1, name: "Draft: Lamps next week" })).toBeVisible();
  const draft = manager.url();
  await manager.goto(`${draft}/item/driving-lamps`);
  await manager.getByRole("textbox", { name: "Price without tax" }).fill("dear");
  await manager.getByRole("button", { name: "Save in the draft" }).click();
  await expect(manager.getByRole("textbox", { name: "Price without tax" })).toHaveValue("dear");
  await expect(manager.getByRole("alert").first()).toContainText("Write the amount as a number");
  await manager.getByRole("textbox", { name: "Price without tax" }).fill("777");
  await checkAccessibility(manager);
  await manager.getByRole("button", { name: "Save in the draft" }).click();
  await expect(manager.getByRole("cell", { name: "$777.00" })).toBeVisible();
  await manager.getByRole("button", { name: "Publish on that day" }).click();
  await expect(manager.getByRole("heading", { level: 1, name: "Waiting: Lamps next week" })).toBeVisible();
  await manager.getByRole("button", { name: "Wait for no day" }).click();
  await expect(manager.getByRole("heading", { level: 1, name: "Draft: Lamps next week" })).toBeVisible();
  await manager.getByRole("button", { name: "Undo" }).click();
  await expect(manager.getByText("Nothing yet.", { exact: false })).toBeVisible();
  await manager.getByRole("button", { name: "Discard" }).click();
  await manager.getByRole("alertdialog").getByRole("button", { name: "Discard the draft" }).click();
  await expect(manager.getByRole("heading", { level: 1, name: "Versions of the catalogue" })).toBeVisible();

  const technician = await openAs("technician");
  await technician.goto("/catalogue/item/driving-lamps");
  await expect(technician.getByText("Lead time")).toBeVisible();
  await expect(technician.getByText("Price without tax")).toHaveCount(0);
  await expect(technician.getByRole("button", { name: "Change in the draft" })).toHaveCount(0);
});
