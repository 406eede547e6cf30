import { crankPower, type DrivelineLoss, deliveredPower, type PowerPlace } from "../driveline/driveline-loss";
import type { ForecastAssumptions } from "./forecast-assumptions";
import { asExpected, type Deviation, type Spread } from "./forecast-band";
import type { ForecastQuestion } from "./forecast-question";

/** The way from the crank as assumed, or as far off as asked. */
export function drivelineOff(use: ForecastAssumptions, off: Deviation): DrivelineLoss {
  return {
    meshEfficiency: Math.min(1, Math.max(0.05, use.meshEfficiency + off.mesh)),
    dragKwAt6000: Math.max(0, use.dragKwAt6000 + off.dragKw),
    tyreEfficiency: use.tyreEfficiency,
  };
}

/** The place of the answer. */
export function reportPlace({ baseline, reportAt }: ForecastQuestion): PowerPlace {
  return reportAt ?? baseline.at;
}

/** The baseline as expected, at the place of the answer. */
export function baselineThere(
  question: ForecastQuestion,
  powerKw: number,
  speedRpm: number,
  use: ForecastAssumptions,
): number {
  const place = reportPlace(question);
  if (place === question.baseline.at) return powerKw;
  const loss = drivelineOff(use, asExpected);
  return deliveredPower(crankPower(powerKw, speedRpm, question.baseline.at, loss), speedRpm, place, loss);
}

/** How far baseline and driveline may be off: a rating more than a run, and no driveline where all is at the crank. */
export function baselineSpread(question: ForecastQuestion, use: ForecastAssumptions): Spread {
  const { at } = question.baseline;
  const baseline = at === "crank" ? use.ratedBandShare : use.measuredBandShare;
  if (at === "crank" && reportPlace(question) === "crank") return { baseline };
  return { baseline, mesh: use.meshBand, dragKw: use.dragBandKw };
}
