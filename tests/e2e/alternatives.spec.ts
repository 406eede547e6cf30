import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import { deskSetsAGoal, deskTakesAnAlternative } from "./story/alternatives";
import {
  type DeskStory,
  deskAddsTheCustomer,
  deskAddsTheVehicle,
  deskQuotesTheBuild,
  deskStartsTheBuild,
} from "./story/desk";

test("a goal becomes a build, a clash says why, the best completion is taken, and two ways stand side by side", async ({
  page,
}) => {
  await signInAs(page, "desk");
  const serial = String(Date.now()).slice(-7);
  const story: DeskStory = {
    customerName: "Odalys Brennecke",
    phone: "0491 570 158",
    vin: `7Z9ALTR01T${serial}`,
    plate: `8GX ${serial.slice(-3)}`,
  };
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);

  await deskSetsAGoal(page, story);
  const goalBuild = story.buildUrl ?? "";
  await page.goBack();
  await expect(page.getByRole("list", { name: "Ways to the goal" })).toBeVisible();
  await checkAccessibility(page);

  await page.goto(story.vehicleUrl ?? "");
  await deskStartsTheBuild(page, story);
  await deskTakesAnAlternative(page);
  await checkAccessibility(page);

  await page
    .getByRole("navigation", { name: "Compare with another build" })
    .getByRole("link")
    .first()
    .click();
  await expect(page.getByRole("heading", { level: 1, name: /^Build \d+ beside build \d+$/ })).toBeVisible();
  await expect(page.getByRole("row", { name: /^Only here/ })).toContainText("Tows up to 3,000 kg");
  await expect(page.getByRole("row", { name: /^Margin/ })).toHaveCount(0);
  await checkAccessibility(page);

  story.buildUrl = goalBuild;
  await deskQuotesTheBuild(page, story);
});
