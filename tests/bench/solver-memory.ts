import { spawnSync } from "node:child_process";
import path from "node:path";

export type SolverMemory = {
  readonly startMs: number;
  /** What the process holds more once the worker has answered its first question. */
  readonly startedMb: number;
  /** What it holds more after the largest question of the benchmarks, the translation included. */
  readonly largestMb: number;
};

/** Start and memory of the solver's worker, in a process of its own. */
export function solverMemory(): SolverMemory {
  const script = path.join(import.meta.dirname, "weigh-solver.ts");
  const { stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", script], { encoding: "utf8" });
  if (stderr !== "") throw new Error(stderr);
  // Our own script prints this shape.
  return JSON.parse(stdout) as SolverMemory;
}
