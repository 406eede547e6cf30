import { readFileSync, rmSync } from "node:fs";
import path from "node:path";

/** What a running server wrote about itself into its data folder. */
export type Postmaster = { readonly pid: number; readonly port: number };

/**
 * The server that runs on this data folder, or null.
 * A note left by a server that died is removed, because its number may since belong to another program.
 */
export function runningPostmaster(dataFolder: string): Postmaster | null {
  const file = path.join(dataFolder, "postmaster.pid");
  let lines: string[];
  try {
    lines = readFileSync(file, "utf8").split("\n");
  } catch {
    return null;
  }
  const pid = Number(lines[0]);
  const port = Number(lines[3]);
  if (Number.isInteger(pid) && pid > 0 && isAlive(pid) && isServer(pid, dataFolder)) return { pid, port };
  rmSync(file, { force: true });
  return null;
}

/** Whether a process with that number exists, ours or not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/** On Linux the command line tells; elsewhere the process number has to do. */
function isServer(pid: number, dataFolder: string): boolean {
  if (process.platform !== "linux") return true;
  try {
    return readFileSync(`/proc/${pid}/cmdline`, "utf8").split("\0").includes(dataFolder);
  } catch {
    return false;
  }
}
