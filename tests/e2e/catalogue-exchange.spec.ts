import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { checkAccessibility, expect, test } from "./fixtures";

const csv = (name: string, text: string) => ({ name, mimeType: "text/csv", buffer: Buffer.from(text) });

async function check(page: Page, file: ReturnType<typeof csv>) {
  await page.getByLabel(/^Files/).setInputFiles(file);
  await page.getByRole("button", { name: "Check the files" }).click();
  await expect(page.getByRole("heading", { name: "What the files say" })).toBeVisible();
}

test("the catalogue goes out as a file, comes back as it was, and a price list becomes a draft", async ({
  openAs,
}) => {
  const manager = await openAs("manager");
  await manager.goto("/catalogue/export");
  const download = manager.waitForEvent("download");
  await manager.getByRole("link", { name: "The whole catalogue (JSON)" }).click();
  const whole = await readFile(await (await download).path(), "utf8");
  await checkAccessibility(manager);

  await manager.getByRole("link", { name: "Import" }).click();
  const same = { name: "catalogue.json", mimeType: "application/json", buffer: Buffer.from(whole) };
  await check(manager, same);
  await expect(manager.getByText("Nothing would change")).toBeVisible();

  await check(manager, csv("prices.csv", "code;price_aud\nbelt-8-rib;12,345\n"));
  const open = manager.getByRole("row", { name: /prices\.csv/ });
  await expect(open).toContainText("price_aud");
  await expect(open).toContainText("not an amount in AUD");
  await checkAccessibility(manager);

  await check(manager, csv("prices.csv", "code;price_aud\nbelt-8-rib;123,45\n"));
  await expect(manager.getByText(/price_aud: [\d.]+ → 123\.45/)).toBeVisible();
  await manager.getByLabel(/What this draft is for/).fill("Belts, new price");
  await manager.getByRole("button", { name: "Make the draft" }).click();
  await expect(manager).toHaveURL(/\/catalogue\/versions\/[0-9a-f-]+$/);
});

test("a package is worked out, and copied to another vehicle with what takes the place of what does not fit", async ({
  openAs,
}) => {
  const owner = await openAs("owner");
  await owner.goto("/catalogue/packages");
  await expect(owner.getByRole("link", { name: "Long Haul 1.9" })).toBeVisible();
  await checkAccessibility(owner);
  await owner.getByRole("link", { name: "Long Haul 1.9" }).click();
  const ridgewold = owner.getByRole("table", {
    name: "Price of the package on the Kerrow Ridgewold 5.7",
    exact: true,
  });
  await expect(ridgewold.getByRole("row", { name: /^Package/ })).toContainText("$");
  await checkAccessibility(owner);

  await owner.goto("/catalogue/packages/long-haul-19/copy?to=orrismere-gt44");
  await expect(owner.getByText("The promised power does not carry over")).toBeVisible();
  await expect(owner.getByRole("button", { name: /Blower kit 1\.9 L\/rev, 88 mm pulley/ })).toBeVisible();
  await checkAccessibility(owner);
  await owner.getByLabel(/Name of the copy/).fill("Long Haul GT");
  await owner.getByRole("button", { name: "Copy into a new draft" }).click();
  await expect(owner.getByRole("heading", { level: 1, name: "Long Haul GT" })).toBeVisible();
  await expect(owner.getByText(/^draft: Long Haul 1\.9 for the/)).toBeVisible();
});

test("what packages cost is for manager and owner", async ({ openAs }) => {
  const desk = await openAs("desk");
  for (const path of ["/catalogue/export", "/catalogue/import", "/catalogue/packages"]) {
    await desk.goto(path);
    await expect(desk.getByText("For manager and owner", { exact: true })).toBeVisible();
  }
});
