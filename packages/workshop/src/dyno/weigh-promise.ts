import { explainVerdict, type Verdict, verdict } from "@buildproof/engineering";
import type { QuotePromise } from "../quotes/stored-promise";
import { countedRuns, type SessionRecord } from "./session-record";

export type WeighedPromise = {
  readonly outcome: "kept" | "missed" | "notDemonstrated";
  readonly reason: Verdict["reason"];
  readonly measuredKw: number;
  readonly spreadPct: number;
  readonly sentence: string;
};

/** What the verdict would be on the runs that count now. */
export function weighPromise(promise: QuotePromise, proof: SessionRecord): WeighedPromise {
  const found = verdict({ lowKw: promise.lowKw, highKw: promise.highKw }, countedRuns(proof));
  return {
    outcome: found.outcome === "not-demonstrated" ? "notDemonstrated" : found.outcome,
    reason: found.reason,
    measuredKw: found.measuredKw ?? 0,
    spreadPct: Math.max(found.repeatability?.peakSpreadPct ?? 0, found.repeatability?.meanSpreadPct ?? 0),
    sentence: explainVerdict(found),
  };
}
