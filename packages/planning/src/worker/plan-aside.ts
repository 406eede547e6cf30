import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { ImpossibleInputError } from "@buildproof/units";
import type { PlanModel } from "../model/plan-question";
import type { Plan, PlanProgress } from "../plan";
import type { WorkerAnswer, WorkerTask } from "./worker-messages";

export type AsideOptions = {
  readonly schedules?: number | undefined;
  readonly seed?: number | undefined;
  readonly withinMs?: number | undefined;
  /** Ends the search with the best plan so far. */
  readonly signal?: AbortSignal | undefined;
  readonly improved?: ((progress: PlanProgress) => void) | undefined;
};

const WITHIN_MS = 10_000;
/** How long a worker may take over its time before it is ended; a single pass of the largest plans is far below. */
const GRACE_MS = 5_000;

/**
 * Plans in a thread of its own, so that nobody waits meanwhile. Resolves with the best plan when the passes or the time
 * are used up, the bound is met or the signal says so.
 *
 * @throws ImpossibleInputError what `plan` refuses; any other error when the thread dies
 */
export function planAside(model: PlanModel, options: AsideOptions = {}): Promise<Plan> {
  const { schedules = Number.MAX_SAFE_INTEGER, seed = 1, withinMs = WITHIN_MS, signal, improved } = options;
  const stop = new Int32Array(new SharedArrayBuffer(4));
  const worker = start({ model, schedules, seed, withinMs, stop });
  const end = (): void => void Atomics.store(stop, 0, 1);
  if (signal?.aborted) end();
  signal?.addEventListener("abort", end, { once: true });
  const late = setTimeout(() => void worker.terminate(), withinMs + GRACE_MS);
  return new Promise<Plan>((resolve, reject) => {
    worker.on("message", (answer: WorkerAnswer) => {
      if (answer.kind === "improved") improved?.(answer.progress);
      else if (answer.kind === "planned") resolve(answer.plan);
      else reject(new ImpossibleInputError(answer.code, answer.message, answer.path));
    });
    worker.once("error", reject);
    worker.once("exit", () => reject(new Error("The planning thread ended without a plan.")));
  }).finally(() => {
    clearTimeout(late);
    signal?.removeEventListener("abort", end);
    void worker.terminate();
  });
}

/** A bundler makes a file of its own for the worker. Without one, as in tests and scripts, it is bundled here, once. */
function start(workerData: WorkerTask): Worker {
  if (process.env.NEXT_RUNTIME)
    return new Worker(new URL("./plan-worker.ts", import.meta.url), { workerData });
  program ??= bundled();
  return new Worker(program, { workerData, eval: true });
}

let program: string | undefined;

function bundled(): string {
  const require = createRequire(import.meta.url);
  // Named indirectly: the bundler that is only for development must not follow into a page.
  const tool = ["es", "build"].join("");
  const { buildSync } = require(tool) as typeof import("esbuild"); // The package of that name.
  const { outputFiles } = buildSync({
    entryPoints: [path.join(path.dirname(fileURLToPath(import.meta.url)), "plan-worker.ts")],
    bundle: true,
    platform: "node",
    format: "cjs",
    write: false,
  });
  return outputFiles[0]?.text ?? "";
}
