import { spawnSync } from "node:child_process";
import path from "node:path";

export type ImportMemory = { readonly points: number; readonly peakMb: number };

/** The most memory that the import of a million rows holds, in a process of its own, the process included. */
export function importMemory(): ImportMemory {
  const script = path.join(import.meta.dirname, "import-million-rows.ts");
  const { stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", script], { encoding: "utf8" });
  if (stderr !== "") throw new Error(stderr);
  // Our own script prints this shape.
  return JSON.parse(stdout) as ImportMemory;
}
