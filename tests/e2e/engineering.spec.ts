import type { Page } from "@playwright/test";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import {
  addItem,
  choose,
  type DeskStory,
  deskAddsTheCustomer,
  deskAddsTheVehicle,
  deskStartsTheBuild,
} from "./story/desk";

/** A turbo-diesel of the demo that no other test builds on. */
const VALE = "4KT 7VN";

/** A Ridgewold that no other test knows. The maker code is nobody's. */
let made = 0;
async function startBuild(page: Page): Promise<string> {
  made += 1;
  const serial = `${Date.now() % 100_000}`.padStart(5, "0") + made;
  const story: DeskStory = {
    customerName: `Isaura Penhallow ${serial}`,
    phone: `08 5550 ${serial.slice(-4)}`,
    vin: `7Z9ENGN0${made % 10}T${"0".repeat(7 - serial.length)}${serial}`,
    plate: `E${serial.slice(-3)} ${made}G`,
  };
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await deskStartsTheBuild(page, story);
  return page.url();
}

test("each choice moves the forecast, which always comes with its band, its limits and its fuel", async ({
  page,
}) => {
  await signInAs(page, "desk");
  await startBuild(page);
  await expect(page.getByText("No chosen item changes the engine's power.")).toBeVisible();

  await addItem(page, "air", "2.4 L");
  const curve = page.getByRole("figure", { name: "Forecast over the baseline" });
  await expect(curve).toBeVisible();
  const peaks = curve.getByRole("table");
  await expect(peaks.getByRole("row", { name: /^Forecast/ })).toContainText(
    /\d+–\d+\s*kW\s*expected \d+ at [\d,]+ rpm/,
  );
  await expect(peaks.getByRole("row", { name: /^At 43 °C/ })).toContainText(/\d+–\d+/);
  const limits = page.getByRole("table", { name: "What limits where" });
  await expect(limits).toContainText("Charge temperature");

  await addItem(page, "air", "Charge cooler kit");
  await expect(limits).not.toContainText("Charge temperature");
  await expect(limits).toContainText(/Fuel from [45],\d00 rpm/);
  await expect(page.getByText(/High-pressure pump from 4,\d\d0 rpm: short by [89] %\./)).toBeVisible();
  const sweep = page.getByRole("figure", { name: "Fuel asked against given: A sweep of a few seconds" });
  await expect(sweep.getByRole("listitem").filter({ hasText: "High-pressure pump" })).toContainText(
    /short by [89] %/,
  );

  await choose(page, "Package", "Long Grade 2.4");
  // Said beside the forecast, and again where the acceleration rests on it.
  await expect(
    page.getByText(/In gears 1, 2 and 3 the gearbox calibration holds 680 N·m/).first(),
  ).toBeVisible();
  await expect(page.getByText(/Enough: least to spare at the high-pressure pump/).first()).toBeVisible();
  await page.getByRole("button", { name: /^All \d+ assumptions/ }).click();
  await expect(page.getByRole("table", { name: "Spark and knock" })).toContainText(
    "Octane number of the fuel",
  );
  await expect(page.getByRole("button", { name: /^Change: / })).toHaveCount(0);
  await checkAccessibility(page);
});

test("a manager changes an assumption with its reason, and the quote keeps both", async ({
  page,
  openAs,
}) => {
  await signInAs(page, "manager");
  const buildUrl = await startBuild(page);
  await choose(page, "Package", "Long Haul 1.9");
  const forecast = page
    .getByRole("figure", { name: "Forecast over the baseline" })
    .getByRole("row", { name: /^Forecast/ });
  await expect(forecast).toBeVisible();
  const usual = await forecast.textContent();

  await page.getByRole("button", { name: /^All \d+ assumptions/ }).click();
  await page.getByRole("button", { name: "Change: Spark retard at 60 kPa, ratio 11, 98 octane" }).click();
  const dialog = page.getByRole("dialog", { name: "Spark retard at 60 kPa, ratio 11, 98 octane" });
  await test.step("a figure that cannot be meant, and no reason", async () => {
    await dialog.getByRole("textbox", { name: "Figure for this build" }).fill("45");
    await dialog.getByRole("textbox", { name: "Why this build differs" }).fill("Tank sample tested low");
    await dialog.getByRole("button", { name: "Change", exact: true }).click();
    await expect(dialog.getByRole("alert")).toContainText("must lie between 0 and 30°");
    await expect(dialog.getByRole("textbox", { name: "Why this build differs" })).toHaveValue(
      "Tank sample tested low",
    );
    await checkAccessibility(page);
  });
  await dialog.getByRole("textbox", { name: "Figure for this build" }).fill("14");
  await dialog.getByRole("button", { name: "Change", exact: true }).click();
  await expect(dialog).toBeHidden();
  const changed = page.getByRole("list", { name: "Assumptions changed on this build" });
  await expect(changed).toContainText("Spark retard at 60 kPa, ratio 11, 98 octane: 14°");
  await expect(changed).toContainText("“Tank sample tested low” Marek Oduya");
  await expect(forecast).not.toHaveText(usual ?? "");

  const desk = await openAs("desk");
  await desk.goto(buildUrl);
  await expect(desk.getByRole("list", { name: "Assumptions changed on this build" })).toContainText("14°");
  await desk.getByRole("button", { name: "Quote this" }).click();
  await expect(desk.getByRole("heading", { level: 1, name: /^Quote \d+/ })).toBeVisible();
  await expect(desk.getByRole("heading", { name: "The forecast it rests on" })).toBeVisible();
  await expect(desk.getByText("“Tank sample tested low” Marek Oduya")).toBeVisible();
  await checkAccessibility(desk);
});

test("a turbo-diesel is forecast by its calibration alone, on paper too", async ({ page }) => {
  await signInAs(page, "desk");
  await page.goto(`/customers?q=${encodeURIComponent(VALE)}`);
  await page
    .getByRole("link", { name: new RegExp(VALE) })
    .first()
    .click();
  await deskStartsTheBuild(page, { customerName: "", phone: "", vin: "", plate: VALE });
  const buildUrl = page.url();
  await addItem(page, "ignition and calibration", "Tow calibration");
  await expect(page.getByRole("table", { name: "What limits where" })).toContainText("Exhaust temperature");
  await page.goto(`${buildUrl}/print`);
  await expect(page.getByRole("figure", { name: "Forecast over the baseline" })).toBeVisible();
  await expect(page.getByRole("table", { name: "Assumed, and whether it is as usual" })).toContainText(
    "Lambda of the baseline",
  );
  await checkAccessibility(page);
});
