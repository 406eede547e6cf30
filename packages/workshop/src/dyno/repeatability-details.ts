import { explainHeatSoak, explainOutlier, repeatability, runSpread } from "@buildproof/engineering";
import { countedRuns, type SessionRecord } from "./session-record";

/** How the runs that count agree, one by one and as a row. */
export type RepeatabilityDetails = {
  readonly peakSpreadPct: number;
  readonly meanSpreadPct: number;
  readonly band: { readonly fromRpm: number; readonly toRpm: number } | null;
  readonly limitPct: number;
  readonly runs: readonly StandingRun[];
  /** Null with fewer than three runs. */
  readonly heatSoak: string | null;
};

export type StandingRun = {
  readonly number: number;
  readonly peakKw: number;
  readonly meanKw: number;
  readonly offOthersPct: number;
  readonly intakeTempC: number | null;
  /** Why it stands apart; null where it does not. */
  readonly outlier: string | null;
};

export function repeatabilityDetails(session: Pick<SessionRecord, "runs">): RepeatabilityDetails {
  const counted = session.runs.filter(({ excludedBecause }) => excludedBecause === null);
  const agreement = repeatability(countedRuns(session));
  const { standings, heatSoak } = runSpread(countedRuns(session));
  return {
    peakSpreadPct: agreement.peakSpreadPct,
    meanSpreadPct: agreement.meanSpreadPct,
    band: agreement.commonBand,
    limitPct: agreement.limitPct,
    runs: standings.map((standing, index) => ({
      number: counted[index]?.number ?? index + 1,
      peakKw: counted[index]?.reduced.peakPower.value ?? 0,
      meanKw: standing.meanKw,
      offOthersPct: standing.offOthersPct,
      intakeTempC: standing.intakeTempC,
      outlier: explainOutlier(standing),
    })),
    heatSoak: heatSoak && explainHeatSoak(heatSoak),
  };
}
