import { createHash } from "node:crypto";
import {
  chownSync,
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import { SetupRefusal } from "../setup/setup-refusal";
import { isReachableBy } from "./is-reachable-by";
import { serverBinaries } from "./server-binaries";
import type { ServerUser } from "./server-user";

/** Where one server's programs and data live. */
export type ServerPlace = { readonly binaries: string; readonly dataFolder: string };

/**
 * Chooses the folders. Under root the server's own account must be able to reach them; a checkout
 * below a closed folder (a private home, a fresh `mktemp -d`) is not reachable, and then programs
 * and data go below /var/tmp, under a name made from the checkout's path.
 */
export function serverPlace(
  folder: string,
  remembered: string | null,
  user: ServerUser | null,
  say: (line: string) => void,
): ServerPlace {
  const own = remembered ?? path.join(folder, "postgres");
  const binaries = serverBinaries();
  if (!user) return { binaries, dataFolder: own };
  const dataReachable = isReachableBy(user, path.dirname(own));
  if (dataReachable && isReachableBy(user, path.join(binaries, "bin"))) return { binaries, dataFolder: own };

  const elsewhere = path.join("/var/tmp", `buildproof-${shortHash(path.resolve(folder))}`);
  makePrivateFolder(elsewhere, user);
  const dataFolder = dataReachable ? own : path.join(elsewhere, "postgres");
  say(
    `This folder is closed to the account ${user.name}, so PostgreSQL and its data are kept in ${elsewhere}`,
  );
  return { binaries: copyOfBinaries(binaries, elsewhere), dataFolder };
}

function makePrivateFolder(folder: string, user: ServerUser): void {
  if (!existsSync(folder)) {
    mkdirSync(folder, { mode: 0o700 });
    chownSync(folder, user.uid, user.gid);
  }
  // Anyone may make a folder in /var/tmp; one made by a stranger must not receive our data.
  const owner = statSync(folder).uid;
  if (owner !== user.uid && owner !== 0) {
    throw new SetupRefusal(`The folder ${folder} belongs to another account: remove it and start again.`);
  }
}

function copyOfBinaries(binaries: string, elsewhere: string): string {
  const copy = path.join(elsewhere, "server");
  const stamp = path.join(copy, "copied-from");
  const version = readFileSync(path.join(path.dirname(binaries), "package.json"), "utf8");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === version) return copy;
  rmSync(copy, { recursive: true, force: true });
  cpSync(binaries, copy, { recursive: true, verbatimSymlinks: true });
  openForReading(copy);
  writeFileSync(stamp, version);
  return copy;
}

/** The originals may have been installed for their owner's eyes only. */
function openForReading(folder: string): void {
  chmodSync(folder, 0o755);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const place = path.join(folder, entry.name);
    if (entry.isDirectory()) openForReading(place);
    else if (entry.isFile()) chmodSync(place, statSync(place).mode & 0o100 ? 0o755 : 0o644);
  }
}

function shortHash(text: string): string {
  return createHash("sha256").update(text).digest("hex").slice(0, 12);
}
