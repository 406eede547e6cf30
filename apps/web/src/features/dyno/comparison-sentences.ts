import type { Comparison } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** What the proof made over the baseline, and what stands in the way of comparing them. */
export function comparisonSentences(comparison: Comparison): readonly string[] {
  const { peakPowerKw, peakPowerPct, peakTorqueNm, observedPeakPowerKw, greatestAt, isDemonstrated } =
    comparison;
  const corrected = `${signed(peakPowerKw)} kW of peak power (${signed(peakPowerPct)} %) and ${signed(peakTorqueNm)} N·m of peak torque over the baseline`;
  const observed = `${signed(observedPeakPowerKw)} kW as observed`;
  const first = comparison.showObservedFirst ? `${observed}; ${corrected}.` : `${corrected}; ${observed}.`;
  return [
    first,
    `Most is gained at ${figureText(greatestAt.engineRpm)} rpm: ${signed(greatestAt.powerKw)} kW.`,
    ...(isDemonstrated
      ? []
      : ["A gain under 2 % is within what the dyno itself may do: it is not demonstrated."]),
    ...(comparison.obstacles.length === 0
      ? []
      : [
          "The gain is not comparable, because baseline and proof were not measured alike.",
          ...comparison.obstacles,
        ]),
    ...comparison.cautions,
  ];
}

function signed(value: number): string {
  return figureText(value, 0, true);
}
