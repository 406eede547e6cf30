import type { Page } from "@playwright/test";
import { checkAccessibility, expect, signInAs, test } from "./fixtures";
import {
  addItem,
  type DeskStory,
  deskAddsTheCustomer,
  deskAddsTheVehicle,
  deskStartsTheBuild,
} from "./story/desk";

/** A vehicle that no other test knows. The maker code is nobody's. */
function aStory(): DeskStory {
  const serial = `${Date.now() % 1_000_000}`.padStart(6, "0");
  return {
    customerName: `Isolde Marrack ${serial}`,
    phone: `08 5550 ${serial.slice(-4)}`,
    vin: `7Z9DESK09T0${serial}`,
    plate: `C${serial.slice(-3)} ${serial.slice(0, 2)}X`,
  };
}

const figures = (page: Page) => page.getByRole("region", { name: "What it does to the vehicle" });
const part = (page: Page, heading: string) =>
  figures(page)
    .locator("section")
    .filter({ has: page.getByRole("heading", { name: heading, exact: true }) });

test("the desk sees at each choice what tyres and a trailer do to the vehicle, and what to do about it", async ({
  page,
}) => {
  test.slow();
  await signInAs(page, "desk");
  const story = aStory();
  await deskAddsTheCustomer(page, story);
  await deskAddsTheVehicle(page, story);
  await deskStartsTheBuild(page, story);
  await test.step("as it stands", async () => {
    await expect(part(page, "Tyres and gearing")).toContainText(
      "The standard tyres stay. Geared as standard.",
    );
    await expect(part(page, "Masses and axle loads")).toContainText(
      "With every seat taken it is within its limits",
    );
    await expect(part(page, "Towing")).toContainText("No trailer is asked for");
    await expect(part(page, "Acceleration")).toContainText("closed course only");
    await checkAccessibility(page);
  });
  await test.step("33-inch tyres: slower than the vehicle, taller, and the speedometer reads low", async () => {
    await addItem(page, "wheels and tyres", "33x12.50R18 tyres");
    const tyres = part(page, "Tyres and gearing");
    await expect(tyres).toContainText("Geared 1.3 % taller");
    await expect(tyres.getByRole("row", { name: /^Design diameter/ })).toContainText("838.2");
    await expect(tyres.getByRole("listitem").filter({ hasText: "Speed symbol N" })).toContainText("Stop");
    const speedometer = part(page, "Speedometer");
    await expect(speedometer.getByRole("row", { name: /^80/ })).toContainText("reads low");
    await expect(speedometer).toContainText("add the speedometer recalibration");
  });
  await test.step("recalibrated, it is within the regulation", async () => {
    await addItem(page, "wheels and tyres", "Speedometer recalibration");
    await expect(part(page, "Speedometer")).toContainText("Recalibrated to show 2 % over the true speed");
  });
  await test.step("a trailer of 3,000 kg rests on the rear axle and on the gross mass", async () => {
    await addItem(page, "towing", "Tows up to 3,000 kg");
    const masses = part(page, "Masses and axle loads");
    await expect(masses.getByRole("row", { name: /^Trailer, on the ball/ })).toContainText("+300");
    await expect(masses).toContainText("Over the gross vehicle mass of 3,350 kg");
    await expect(part(page, "Towing").getByRole("row", { name: /^On the ball/ })).toContainText(
      "held there by the gross vehicle mass",
    );
    await masses.getByRole("button", { name: "What the build adds, part by part" }).click();
    await expect(masses.getByRole("row", { name: /^33x12\.50R18 tyres/ })).toContainText("+45");
    await checkAccessibility(page);
  });
  await test.step("a blower that is short of fuel is no quicker; with what is missing it is, by a band", async () => {
    await addItem(page, "air", "2.4 L");
    await expect(page.getByRole("list", { name: "Missing or short in Fuel" })).toContainText("short by 9 %");
    const row = part(page, "Acceleration").getByRole("row", { name: /^0 to 100 km\/h/ });
    await expect(row).toContainText(/\+\d\.\ds\+\d\.\d to \+\d\.\d/);
    await page.getByRole("button", { name: /^(Add everything that is missing|Take the cheapest)/ }).click();
    await expect(row).toContainText(/−\d\.\ds−\d\.\d to −\d\.\d/);
    await part(page, "Acceleration").getByRole("button", { name: "What these times rest on" }).click();
    await expect(part(page, "Acceleration")).toContainText("Driver alone, level and dry");
  });
  await test.step("on paper, with what the times rest on", async () => {
    await page.getByRole("link", { name: "Print" }).click();
    await expect(page.getByRole("heading", { level: 1, name: /^Build sheet \d+/ })).toBeVisible();
    await expect(part(page, "Acceleration")).toContainText("Driver alone, level and dry");
    await expect(part(page, "Tyres and gearing")).toContainText("33x12.50R18LT 118N");
    await checkAccessibility(page);
  });
});
