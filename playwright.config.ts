import { defineConfig, devices } from "@playwright/test";
import { findBrowser } from "./scripts/service/find-browser.mjs";

const port = process.env.BUILDPROOF_TEST_PORT ?? "3190";
const executablePath = findBrowser();

const desktop = { ...devices["Desktop Chrome"], viewport: { width: 1440, height: 900 } };

/**
 * Two files at a time, as two people at two desks; within a file one test after the other, since they share one
 * workshop. No retries: a test that fails sometimes has found something.
 */
export default defineConfig({
  testDir: "tests/e2e",
  globalSetup: "./tests/e2e/service.ts",
  workers: 2,
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
    // A film of every test costs more than the tests themselves; what was on the page is kept without it.
    trace: { mode: "retain-on-failure", screenshots: false },
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
    // The longest of all begins first, so that it does not run on alone at the end.
    { name: "story", testMatch: "story.spec.ts", use: desktop },
    { name: "chromium", testIgnore: "story.spec.ts", use: desktop },
  ],
});
