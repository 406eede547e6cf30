import type { Transaction } from "@buildproof/database";
import { baselinePassed } from "../dyno/baseline-passed";
import { readPromise } from "../quotes/stored-promise";
import type { GateJob } from "./gate-job";
import { type GatePoint, gatePoint } from "./gate-point";

/**
 * A promise is a gain over something: once the vehicle is apart nobody can measure what it made before. Null
 * where the accepted version promises no power, because then the dyno has nothing to prove.
 */
export async function baselinePoint(tx: Transaction, job: GateJob): Promise<GatePoint | null> {
  if (readPromise(job.version.promise) === null) return null;
  const { passed, sentence } = await baselinePassed(tx, job.vehicleId);
  return gatePoint({
    point: "baseline",
    title: "Baseline on the dyno",
    met: passed,
    sentence,
    resolve: "Dyno operator: measure the baseline on the vehicle's dyno page before anything is taken apart.",
    place: "dyno",
  });
}
