import { spawn } from "node:child_process";

/**
 * Runs a program to its end; throws with what it printed when it fails.
 * @param {string} command
 * @param {string[]} args
 * @param {{ cwd?: string, env?: Record<string, string>, show?: boolean }} [options]
 * @returns {Promise<string>}
 */
export function runProgram(command, args, { cwd, env, show = false } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", TURBO_TELEMETRY_DISABLED: "1", ...env },
      stdio: show ? "inherit" : ["ignore", "pipe", "pipe"],
      shell: process.platform === "win32" && command === "npm",
    });
    let output = "";
    const keep = (chunk) => {
      output = (output + chunk).slice(-20_000);
    };
    child.stdout?.on("data", keep);
    child.stderr?.on("data", keep);
    child.once("error", reject);
    child.once("close", (code) =>
      code === 0
        ? resolve(output)
        : reject(new Error(`${command} ${args.join(" ")} failed (${code}).\n${output}`)),
    );
  });
}
