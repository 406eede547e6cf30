import { createHash } from "node:crypto";
import {
  chmodSync,
  cpSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import path from "node:path";

/** A copy of the server's programs in that folder, made once for each version of them. */
export function copyOfBinaries(binaries: string, folder: string): string {
  const description = readFileSync(path.join(path.dirname(binaries), "package.json"));
  const version = createHash("sha256").update(description).digest("hex").slice(0, 12);
  const copy = path.join(folder, `server-${version}`);
  if (existsSync(copy)) return copy;
  // Made beside and renamed, so that a copy is whole or absent, whoever else makes one now.
  const draft = `${copy}.${process.pid}`;
  cpSync(binaries, draft, { recursive: true, verbatimSymlinks: true });
  openForReading(draft);
  try {
    renameSync(draft, copy);
  } catch (error) {
    rmSync(draft, { recursive: true, force: true });
    if (!existsSync(copy)) throw error;
  }
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
