import type { Verdict } from "./proof-figures";
import { FEWEST_RUNS } from "./repeatability";

/** The verdict in one sentence, power rounded to whole kilowatts. */
export function explainVerdict(verdict: Verdict): string {
  const { promise, repeatability } = verdict;
  const promised = `${kw(promise.lowKw)} to ${kw(promise.highKw)} promised`;
  const measured = kw(verdict.measuredKw ?? 0);
  switch (verdict.reason) {
    case "within-the-promise":
      return `Kept: ${measured} measured, ${promised}.`;
    case "above-the-promise":
      return `Kept: ${measured} measured, above the ${promised}.`;
    case "below-the-promise":
      return `Missed: ${measured} measured, ${promised}; short by ${kw(-(verdict.aboveLowKw ?? 0))}.`;
    case "too-few-runs":
      return `Not demonstrated: ${repeatability?.runs ?? 0} of ${FEWEST_RUNS} runs made; make the rest under the same set-up.`;
    case "runs-do-not-agree":
      return `Not demonstrated: the runs spread by ${spread(verdict)} % where ${repeatability?.limitPct ?? 0} % is allowed; find out why and run again.`;
    case "correction-out-of-limits":
      return `Not demonstrated: the air was outside what the correction allows (${measured} corrected, ${promised}); run again in milder air.`;
  }
}

function spread({ repeatability }: Verdict): string {
  return Math.max(repeatability?.peakSpreadPct ?? 0, repeatability?.meanSpreadPct ?? 0).toFixed(1);
}

function kw(power: number): string {
  return `${power.toFixed(0)} kW`;
}
