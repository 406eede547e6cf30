import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { repository } from "../service/repository.mjs";
import { countPlaywright, countVitest } from "./count-results.mjs";

/** Runs one vitest project and counts its tests. */
export function runVitest(project) {
  return withReport(async (report) => {
    const args = [
      "run",
      "--project",
      project,
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${report}`,
    ];
    const code = await show("vitest/vitest.mjs", args, {});
    return believed(code, countVitest(read(report)));
  });
}

/** Runs the browser tests on a port that is free now and counts them. */
export function runPlaywright() {
  return withReport(async (report) => {
    const env = { PLAYWRIGHT_JSON_OUTPUT_NAME: report, BUILDPROOF_TEST_PORT: String(await freePort()) };
    const code = await show("@playwright/test/cli.js", ["test", "--reporter=list,json"], env);
    return believed(code, countPlaywright(read(report)));
  });
}

/** An error outside every test shows only in the exit code; skipped tests show only in the report. */
function believed(code, counts) {
  return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

function show(program, args, env) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [path.join(repository, "node_modules", program), ...args], {
      cwd: repository,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", ...env },
      stdio: "inherit",
    });
    child.once("error", reject);
    child.once("close", resolve);
  });
}

async function withReport(run) {
  const folder = mkdtempSync(path.join(tmpdir(), "buildproof-report-"));
  try {
    return await run(path.join(folder, "report.json"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function read(report) {
  try {
    return JSON.parse(readFileSync(report, "utf8"));
  } catch {
    // The runner ended before it could report: that is a failure, and counted as one.
    return {};
  }
}

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}
