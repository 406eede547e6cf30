import { statSync } from "node:fs";
import path from "node:path";
import type { ServerUser } from "./server-user";

/** Whether every folder from the root down to `folder` lets that account pass through. */
export function isReachableBy(user: ServerUser, folder: string): boolean {
  for (let at = path.resolve(folder); ; at = path.dirname(at)) {
    if (!canPass(user, at)) return false;
    if (at === path.dirname(at)) return true;
  }
}

function canPass(user: ServerUser, folder: string): boolean {
  const status = statSync(folder, { throwIfNoEntry: false });
  // A folder we have yet to make will be made for that account.
  if (!status) return true;
  if (status.uid === user.uid) return (status.mode & 0o100) !== 0;
  if (status.gid === user.gid) return (status.mode & 0o010) !== 0;
  return (status.mode & 0o001) !== 0;
}
