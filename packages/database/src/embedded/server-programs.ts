import { spawn } from "node:child_process";
import { chownSync, closeSync, mkdirSync, openSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { SetupRefusal } from "../setup/setup-refusal";
import type { ServerPlace } from "./server-place";
import type { ServerUser } from "./server-user";

/** Settings given on the command line. Loopback only; no socket files, so that paths stay short enough. */
const alwaysSet = ["listen_addresses=127.0.0.1", "unix_socket_directories=", "timezone=Etc/UTC"];

/** Makes an empty cluster owned by `buildproof` with that password. */
export async function initialiseCluster(
  place: ServerPlace,
  user: ServerUser | null,
  ownerPassword: string,
): Promise<void> {
  mkdirSync(place.dataFolder, { recursive: true, mode: 0o700 });
  const passwordFile = `${place.dataFolder}.password`;
  writeFileSync(passwordFile, `${ownerPassword}\n`, { mode: 0o600 });
  if (user) {
    chownSync(place.dataFolder, user.uid, user.gid);
    chownSync(passwordFile, user.uid, user.gid);
  }
  try {
    await run(place, user, "initdb", [
      `--pgdata=${place.dataFolder}`,
      "--username=buildproof",
      `--pwfile=${passwordFile}`,
      "--auth=scram-sha-256",
      "--encoding=UTF8",
      "--locale=C",
      "--locale-provider=builtin",
      "--builtin-locale=C.UTF-8",
    ]);
  } catch (error) {
    // A half-made cluster would be taken for a whole one at the next start.
    rmSync(place.dataFolder, { recursive: true, force: true });
    throw error;
  } finally {
    rmSync(passwordFile, { force: true });
  }
}

/** Starts the server, detached from this terminal so that Ctrl-C reaches us first; resolves when it accepts connections. */
export async function startPostmaster(
  place: ServerPlace,
  user: ServerUser | null,
  port: number,
  settings: readonly string[],
): Promise<void> {
  const log = path.join(place.dataFolder, "server.log");
  const options = [...alwaysSet, ...settings].map((setting) => `-c ${quoted(setting)}`);
  const args = ["-D", place.dataFolder, "-l", log, "-w", "-t", "60", "-o", `-p ${port} ${options.join(" ")}`];
  rmSync(log, { force: true });
  try {
    await run(place, user, "pg_ctl", [...args, "start"]);
  } catch (error) {
    throw withLog(error, log);
  }
}

/** Rolls back what is open, writes everything out and ends the server. */
export async function stopPostmaster(place: ServerPlace, user: ServerUser | null): Promise<void> {
  await run(place, user, "pg_ctl", ["-D", place.dataFolder, "-m", "fast", "-w", "-t", "60", "stop"]);
}

function quoted(setting: string): string {
  return `'${setting.replaceAll("'", "'\\''")}'`;
}

function withLog(error: unknown, log: string): unknown {
  let tail = "";
  try {
    tail = readFileSync(log, "utf8").split("\n").slice(-8).join("\n");
  } catch {
    return error;
  }
  return refusalOf(tail) ?? new Error(`PostgreSQL did not start:\n${tail}`, { cause: error });
}

function refusalOf(output: string): SetupRefusal | null {
  if (/No space left on device/i.test(output)) {
    return new SetupRefusal(
      "The disk is full: free some space, then start again; nothing already saved is lost.",
    );
  }
  if (/database files are incompatible with server/i.test(output)) {
    return new SetupRefusal(
      "The data was written by another PostgreSQL version: start the version of Buildproof that wrote it, or move .buildproof away.",
    );
  }
  return null;
}

function run(place: ServerPlace, user: ServerUser | null, program: string, args: string[]): Promise<void> {
  const output = path.join(path.dirname(place.dataFolder), `${program}.log`);
  mkdirSync(path.dirname(output), { recursive: true });
  // To a file and not a pipe: the server inherits it and would hold a pipe open for ever.
  const sink = openSync(output, "w", 0o600);
  return new Promise<void>((resolve, reject) => {
    const child = spawn(path.join(place.binaries, "bin", program), args, {
      ...(user ? { uid: user.uid, gid: user.gid } : {}),
      cwd: place.dataFolder,
      env: { PATH: process.env.PATH ?? "", LC_ALL: "C", TZ: "UTC" },
      stdio: ["ignore", sink, sink],
      windowsHide: true,
    });
    child.once("error", reject);
    child.once("close", (code) => {
      if (code === 0) return resolve();
      const text = readFileSync(output, "utf8").trim();
      reject(refusalOf(text) ?? new Error(`${program} failed (${code}): ${text}`));
    });
  }).finally(() => closeSync(sink));
}
