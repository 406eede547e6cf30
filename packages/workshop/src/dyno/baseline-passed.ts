import type { Transaction } from "@buildproof/database";
import { codeOf } from "./compare-sessions";
import { sessionFigures } from "./session-figures";
import { readSessions } from "./session-record";

export type BaselineStanding = { readonly passed: boolean; readonly sentence: string };

/**
 * Whether the vehicle has a baseline that a promise can be built on: three runs that agree, in air the
 * correction allows. How long it stays good is the inspection's matter, which it belongs to.
 */
export async function baselinePassed(tx: Transaction, vehicleId: string): Promise<BaselineStanding> {
  const sessions = await readSessions(tx, { vehicleId });
  const newest = sessions.findLast(({ kind }) => kind === "baseline");
  if (!newest)
    return { passed: false, sentence: "This vehicle has no baseline yet: measure it on the dyno." };
  const { enoughRuns, isRepeatable, runs, spreadPct, spreadLimitPct, peakPower } = sessionFigures(newest);
  if (!enoughRuns)
    return { passed: false, sentence: `The baseline has ${runs} of 3 runs that count: measure it again.` };
  if (!isRepeatable)
    return {
      passed: false,
      sentence: `The baseline's runs spread by ${spreadPct.toFixed(1)} % where ${spreadLimitPct} % is allowed: find out why and measure it again.`,
    };
  if (!newest.factorValid)
    return {
      passed: false,
      sentence: `The baseline was measured in air that ${codeOf(newest)} does not allow: measure it again in milder air.`,
    };
  const peak = peakPower
    ? `${peakPower.value.toFixed(0)} kW at ${peakPower.engineRpm.toLocaleString("en-AU")} rpm`
    : "";
  return {
    passed: true,
    sentence: `Baseline measured: ${peak} at the hubs, ${runs} runs within ${spreadPct.toFixed(1)} %.`,
  };
}
