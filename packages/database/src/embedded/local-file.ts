import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";

/** Reads a small JSON file of our own; null when it is not there. */
export function readLocalFile(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}

/** Replaces the file in one step, so that a crash leaves the old or the new one, readable by its owner only. */
export function writeLocalFile(file: string, content: unknown): void {
  mkdirSync(path.dirname(file), { recursive: true });
  const draft = `${file}.${process.pid}`;
  writeFileSync(draft, `${JSON.stringify(content, null, 2)}\n`, { mode: 0o600 });
  renameSync(draft, file);
}
