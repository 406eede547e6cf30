import { fork } from "node:child_process";
import path from "node:path";
import type { FullConfig } from "@playwright/test";

/** Starts the production build on a database of its own with the demo in it; stops both afterwards. */
export default async function startForBrowserTests(config: FullConfig): Promise<() => Promise<void>> {
  if (process.env.BUILDPROOF_TEST_URL) return async () => {};
  const { port } = new URL(config.projects[0]?.use.baseURL ?? "");
  const program = path.join(import.meta.dirname, "..", "..", "scripts", "service", "service-for-tests.mjs");
  const child = fork(program, [], { env: { ...process.env, PORT: port, HOST: "" }, stdio: "inherit" });
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  await new Promise<void>((resolve, reject) => {
    child.once("message", () => resolve());
    child.once("exit", (code) =>
      reject(new Error(`the service for the browser tests did not start (${code})`)),
    );
  });
  return async () => {
    child.disconnect();
    await ended;
  };
}
