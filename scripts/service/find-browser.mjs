import { existsSync } from "node:fs";
import path from "node:path";
import { runProgram } from "./run-program.mjs";
import { stage } from "./stage.mjs";

/** The first has no window to draw: it answers sooner. */
const debianPackages = ["chromium-headless-shell", "chromium"];
const names = [...debianPackages, "chromium-browser", "google-chrome", "google-chrome-stable"];

/**
 * An installed Chromium; null when there is none and Playwright's own has to do. CHROMIUM names another.
 * @returns {string | null}
 */
export function findBrowser() {
  if (process.env.CHROMIUM) return process.env.CHROMIUM;
  const folders = (process.env.PATH ?? "").split(path.delimiter);
  const candidates = names.flatMap((name) => folders.map((folder) => path.join(folder, name)));
  if (process.platform === "darwin")
    candidates.push("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
  return candidates.find((file) => existsSync(file)) ?? null;
}

/** Installs a browser where none is: Debian's package as root on Debian, else Playwright's own. */
export async function installBrowserWhenNeeded() {
  if (findBrowser() || (await hasPlaywrightBrowser())) return;
  await stage("Installing a browser for the tests", async () => {
    if (process.getuid?.() === 0 && existsSync("/etc/debian_version")) {
      if (await installFromDebian()) return;
    }
    await runProgram(process.execPath, ["node_modules/@playwright/test/cli.js", "install", "chromium"]);
  });
}

/** @returns {Promise<boolean>} whether there is a browser now */
async function installFromDebian() {
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  try {
    await runProgram("apt-get", ["update", "-q"], { env });
  } catch (error) {
    // What was fetched of the lists before may do.
    console.error(firstLine(error));
  }
  for (const name of debianPackages) {
    try {
      await runProgram("apt-get", ["install", "-y", "-q", "--no-install-recommends", name], { env });
    } catch (error) {
      console.error(`Debian's ${name} could not be installed: ${firstLine(error)}`);
    }
    if (findBrowser()) return true;
  }
  return false;
}

const firstLine = (error) => error.message.split("\n")[0];

async function hasPlaywrightBrowser() {
  const { chromium } = await import("@playwright/test");
  return existsSync(chromium.executablePath());
}
