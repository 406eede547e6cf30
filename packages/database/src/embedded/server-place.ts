import { createHash } from "node:crypto";
import { chownSync, existsSync, mkdirSync, statSync } from "node:fs";
import path from "node:path";
import { SetupRefusal } from "../setup/setup-refusal";
import { copyOfBinaries } from "./copy-of-binaries";
import { isReachableBy } from "./is-reachable-by";
import { serverBinaries } from "./server-binaries";
import type { ServerUser } from "./server-user";

/** Where one server's programs and data live. */
export type ServerPlace = { readonly binaries: string; readonly dataFolder: string };

/**
 * Chooses the folders. Under root the server's own account must be able to reach them; a checkout
 * below a closed folder (a private home, a fresh `mktemp -d`) is not reachable, and then programs
 * and data go below /var/tmp, under names made from the folders' own paths.
 */
export function serverPlace(
  folder: string,
  remembered: string | null,
  user: ServerUser | null,
  say: (line: string) => void,
): ServerPlace {
  const dataFolder = remembered ?? path.join(folder, "postgres");
  const binaries = serverBinaries();
  if (!user) return { binaries, dataFolder };
  return {
    binaries: reachableBinaries(binaries, user, say),
    dataFolder: reachableData(dataFolder, user, say),
  };
}

function reachableData(dataFolder: string, user: ServerUser, say: (line: string) => void): string {
  if (isReachableBy(user, path.dirname(dataFolder))) return dataFolder;
  const elsewhere = privateFolder(dataFolder, user);
  say(`The data folder is closed to the account ${user.name}, so the data are kept in ${elsewhere}`);
  return path.join(elsewhere, "postgres");
}

function reachableBinaries(binaries: string, user: ServerUser, say: (line: string) => void): string {
  if (isReachableBy(user, path.join(binaries, "bin"))) return binaries;
  const elsewhere = privateFolder(binaries, user);
  say(`This checkout is closed to the account ${user.name}, so PostgreSQL runs from a copy in ${elsewhere}`);
  return copyOfBinaries(binaries, elsewhere);
}

function privateFolder(instead: string, user: ServerUser): string {
  const name = createHash("sha256").update(path.resolve(instead)).digest("hex").slice(0, 12);
  const folder = path.join("/var/tmp", `buildproof-${name}`);
  if (!existsSync(folder)) {
    mkdirSync(folder, { mode: 0o700 });
    chownSync(folder, user.uid, user.gid);
  }
  // Anyone may make a folder in /var/tmp; one made by a stranger must not receive our data.
  const owner = statSync(folder).uid;
  if (owner !== user.uid && owner !== 0) {
    throw new SetupRefusal(`The folder ${folder} belongs to another account: remove it and start again.`);
  }
  return folder;
}
