import { parentPort, workerData } from "node:worker_threads";
import { ImpossibleInputError } from "@buildproof/units";
import { plan } from "../plan";
import type { WorkerAnswer, WorkerTask } from "./worker-messages";

/** The other end of `planAside`: plans what it was started with, tells of every better plan, and ends. */
const port = parentPort;
if (port) {
  // Handed over by `planAside` alone, which is typed.
  const { model, schedules, seed, withinMs, stop } = workerData as WorkerTask;
  const tell = (answer: WorkerAnswer): void => port.postMessage(answer);
  const begun = performance.now();
  try {
    const found = plan(model, {
      schedules,
      seed,
      stopped: () => Atomics.load(stop, 0) === 1 || performance.now() - begun >= withinMs,
      improved: (progress) => tell({ kind: "improved", progress }),
    });
    tell({ kind: "planned", plan: found });
  } catch (error) {
    if (!(error instanceof ImpossibleInputError)) throw error;
    tell({ kind: "impossible", code: error.code, message: error.message, path: error.path });
  }
}
