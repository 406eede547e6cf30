import path from "node:path";
import { chromium } from "@playwright/test";
import { findBrowser } from "./service/find-browser.mjs";
import { repository } from "./service/repository.mjs";

// Takes the README's pictures from a demo that is being served: node scripts/take-screenshots.mjs [address]
const address = process.argv[2] ?? "http://localhost:3000";
const executablePath = findBrowser();
const browser = await chromium.launch({
  args: ["--no-sandbox", "--disable-gpu"],
  ...(executablePath ? { executablePath } : {}),
});
try {
  await picture("build-sheet", "noor", { width: 1440, height: 900 }, async (page) => {
    await page.goto(`${address}/builds`);
    await page
      .getByRole("row", { name: /E\. Strand/ })
      .getByRole("link")
      .first()
      .click();
    await page.getByRole("region", { name: "Air" }).waitFor();
  });
  await picture("catalogue-rule", "irena", { width: 1440, height: 900 }, async (page) => {
    await page.goto(`${address}/catalogue?part=rule&system=fuel`);
    await page.getByRole("heading", { level: 1, name: "Catalogue" }).waitFor();
  });
  await picture("plan", "marek", { width: 1440, height: 900 }, (page) => page.goto(`${address}/plan`));
  await picture("job-card", "tilda", { width: 1024, height: 768 }, async (page) => {
    await page.goto(`${address}/floor`);
    await page.getByRole("listitem").filter({ hasText: "7SV 5NB" }).first().getByRole("link").first().click();
    await page.getByRole("form", { name: "Enter this step" }).waitFor();
  });
  await picture("dyno", "tilda", { width: 1440, height: 900 }, async (page) => {
    await page.goto(`${address}/jobs?view=all&search=Oyelowo`);
    await page
      .getByRole("link", { name: /^Job \d+$/ })
      .first()
      .click();
    await page.getByRole("heading", { level: 1, name: /^Job \d+: / }).waitFor();
    const job = new URL(page.url()).pathname.split("/").at(-1);
    await page.goto(`${address}/dyno/jobs/${job}`);
  });
} finally {
  await browser.close();
}

/** Signs somebody of the demo in, goes where `open` leads, and keeps what is seen there. */
async function picture(name, who, viewport, open) {
  const context = await browser.newContext({ viewport, locale: "en-AU", timezoneId: "Australia/Adelaide" });
  const page = await context.newPage();
  await page.goto(`${address}/sign-in`);
  await page.getByLabel("E-mail").fill(`${who}@saltbush.example`);
  await page.getByLabel("Password").fill("drive-gently-42");
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL((url) => !url.pathname.startsWith("/sign-in"));
  await open(page);
  await page.waitForLoadState("networkidle");
  await page.screenshot({ path: path.join(repository, "docs", "screenshots", `${name}.png`) });
  await context.close();
}
