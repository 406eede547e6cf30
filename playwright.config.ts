import { defineConfig, devices } from "@playwright/test";
import { findBrowser } from "./scripts/service/find-browser.mjs";

const port = process.env.BUILDPROOF_TEST_PORT ?? "3190";
const executablePath = findBrowser();

const desktop = { ...devices["Desktop Chrome"], viewport: { width: 1440, height: 900 } };

/** One worker and no retries: the tests share one workshop, and a test that fails sometimes has found something. */
export default defineConfig({
  testDir: "tests/e2e",
  globalSetup: "./tests/e2e/service.ts",
  workers: 1,
  retries: 0,
  forbidOnly: true,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [["list"]],
  outputDir: "test-results",
  use: {
    // BUILDPROOF_TEST_URL points the tests at a service that already runs, for writing them.
    baseURL: process.env.BUILDPROOF_TEST_URL ?? `http://127.0.0.1:${port}`,
    // A press that finds nothing fails where it stands, not when the whole test runs out.
    actionTimeout: 20_000,
    locale: "en-AU",
    timezoneId: "Australia/Adelaide",
    // Filming every test costs more than the tests themselves: --trace on films the one that is looked into.
    trace: "off",
    screenshot: "only-on-failure",
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
  projects: [
    { name: "story", testMatch: "story.spec.ts", use: desktop },
    { name: "chromium", testIgnore: "story.spec.ts", use: desktop },
  ],
});
