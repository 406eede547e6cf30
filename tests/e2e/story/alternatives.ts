import { expect, type Page } from "@playwright/test";
import { addItem, type DeskStory } from "./desk";

/** From the vehicle's page: says what is wanted in figures, and starts the best way that meets it. */
export async function deskSetsAGoal(desk: Page, story: DeskStory): Promise<void> {
  await desk.goto(story.vehicleUrl ?? "");
  await desk.getByRole("link", { name: /^From a goal/ }).click();
  await expect(desk.getByRole("heading", { level: 1, name: "From a goal to a build" })).toBeVisible();
  await desk.getByRole("textbox", { name: "At least, at the hubs" }).fill("300");
  await desk.getByRole("textbox", { name: "Tows a trailer of" }).fill("3,000");
  await desk.getByRole("button", { name: "Find the ways" }).click();

  const best = desk.getByRole("list", { name: "Ways to the goal" }).getByRole("listitem").first();
  await expect(best).toContainText(/^.*Meets the goal/);
  await expect(best).toContainText(/Forecast \d+–\d+ kW at the hubs/);
  await best.getByRole("button", { name: /^Start this build/ }).click();
  await expect(desk.getByRole("region", { name: "Air" })).toBeVisible();
  await expect(desk.getByText("Nothing is missing.")).toBeVisible();
  story.buildUrl = desk.url();
}

/** On a build from nothing: a choice that clashes says why before it is pressed, and a completion is taken. */
export async function deskTakesAnAlternative(desk: Page): Promise<void> {
  await addItem(desk, "air", "2.4 L");
  // Each system says for itself; some of it no choice stands in the way of, such as a fuel that nobody sells.
  for (const why of await desk.getByRole("button", { name: /cannot be chosen: why$/ }).all())
    await why.click();
  await expect(desk.getByRole("button", { name: /^Choose it and leave out / }).first()).toBeVisible();

  const ways = desk.getByRole("list", { name: "Ways to complete the build" });
  await expect(ways.getByRole("listitem").first()).toContainText("Proven: none is better.");
  await ways
    .getByRole("button", { name: /^(Add everything that is missing|Take the cheapest)/ })
    .first()
    .click();
  await expect(desk.getByText("Nothing is missing.")).toBeVisible();
  await desk.getByRole("button", { name: /^Undo: \d+ items? added/ }).click();
  await expect(ways.getByRole("listitem").first()).toBeVisible();
  await desk.getByRole("button", { name: /^Redo: / }).click();
  await expect(desk.getByText("Nothing is missing.")).toBeVisible();
}
