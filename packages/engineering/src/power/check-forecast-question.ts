import { ImpossibleInputError } from "@buildproof/units";
import type { Ambient, BlowerQuestion } from "../air/blower-question";
import { checkBlowerQuestion } from "../air/check-blower-question";
import { checkFuelStages } from "../fuel/check-fuel-stages";
import { refuseOutside } from "../question/refuse-outside";
import { checkRisingSpeeds, checkSpeedCurve } from "../question/speed-curve";
import type {
  BreathingChange,
  CalibrationChange,
  ForecastQuestion,
  PowerCurve,
  TorqueCap,
} from "./forecast-question";

/** Refuses a forecast whose parts do not go together, naming the part and what to do. */
export function checkForecastQuestion(question: ForecastQuestion): void {
  const { baseline, blower, calibrationChange, breathingChange, fuelSupply, hotDay } = question;
  checkBaseline(baseline);
  refuseOutside(question.compressionRatio, "compressionRatio", 5, 30);
  const changes = [blower, calibrationChange, breathingChange].filter((change) => change !== undefined);
  if (changes.length !== 1) {
    throw new ImpossibleInputError(
      "one-change",
      "Give exactly one change: blower, calibrationChange or breathingChange.",
      "blower",
    );
  }
  if (blower) checkBlown(question, blower);
  if (calibrationChange) checkCalibration(question, calibrationChange);
  if (breathingChange) checkBreathing(question, breathingChange);
  if (fuelSupply) checkFuelStages(fuelSupply.stages, "fuelSupply.stages");
  question.torqueCaps?.forEach(checkCap);
  if (hotDay) checkHotDay(hotDay, blower);
}

function checkBaseline({ points }: PowerCurve): void {
  if (points.length === 0) {
    throw new ImpossibleInputError(
      "no-baseline",
      "The baseline has no points: give the measured or rated curve.",
      "baseline.points",
    );
  }
  points.forEach(({ powerKw }, at) => {
    refuseOutside(powerKw, `baseline.points[${at}].powerKw`, 0.1, 5_000);
  });
  checkRisingSpeeds(points, "baseline.points");
  refuseOutside(points[0]?.speedRpm, "baseline.points[0].speedRpm", 1, 30_000);
}

function checkBlown({ fuel, baseline }: ForecastQuestion, blower: BlowerQuestion): void {
  if (fuel === "diesel") {
    throw new ImpossibleInputError(
      "not-spark-ignition",
      "A blower is forecast for spark ignition only: give calibrationChange for a diesel.",
      "fuel",
    );
  }
  try {
    checkBlowerQuestion(blower);
  } catch (error) {
    if (!(error instanceof ImpossibleInputError)) throw error;
    throw new ImpossibleInputError(error.code, error.message, `blower.${error.path}`);
  }
  const [first] = baseline.points;
  const last = baseline.points.at(-1);
  if (blower.speedsRpm.length === 0) {
    throw new ImpossibleInputError(
      "no-speeds",
      "There are no speeds to forecast: give at least one.",
      "blower.speedsRpm",
    );
  }
  blower.speedsRpm.forEach((speed, at) => {
    if (first && last && speed >= first.speedRpm && speed <= last.speedRpm) return;
    throw new ImpossibleInputError(
      "outside-baseline",
      `The baseline covers ${first?.speedRpm} to ${last?.speedRpm} rpm, not ${speed}: ask for speeds within it.`,
      `blower.speedsRpm[${at}]`,
    );
  });
}

function checkCalibration({ fuel }: ForecastQuestion, change: CalibrationChange): void {
  if (fuel !== "diesel") {
    throw new ImpossibleInputError(
      "not-compression-ignition",
      "A change of calibration alone is forecast for a turbo-diesel only: give the blower of a spark-ignition build.",
      "fuel",
    );
  }
  checkSpeedCurve(change.torqueRequestNm, "calibrationChange.torqueRequestNm", 1, 10_000);
  refuseOutside(change.smokeLambda, "calibrationChange.smokeLambda", 1, 3);
  refuseOutside(change.exhaustLimitC, "calibrationChange.exhaustLimitC", 200, 1_100);
}

function checkBreathing({ fuel }: ForecastQuestion, change: BreathingChange): void {
  if (fuel === "diesel") {
    throw new ImpossibleInputError(
      "not-spark-ignition",
      "A change of breathing is forecast for spark ignition only: give calibrationChange for a diesel.",
      "fuel",
    );
  }
  const at = "breathingChange";
  refuseOutside(change.displacementL, `${at}.displacementL`, 0.05, 30);
  checkSpeedCurve(change.volumetricEfficiency, `${at}.volumetricEfficiency`, 0.1, 1.5);
  checkSpeedCurve(change.fillingGain, `${at}.fillingGain`, 0.5, 1.3);
  refuseOutside(change.backPressureKPaAt6000, `${at}.backPressureKPaAt6000`, 0, 100);
  refuseOutside(change.retardDeg, `${at}.retardDeg`, 0, 25);
  refuseOutside(change.lambda, `${at}.lambda`, 0.6, 1.1);
}

function checkCap(cap: number | TorqueCap, at: number): void {
  const path = `torqueCaps[${at}]`;
  if (typeof cap === "number") {
    refuseOutside(cap, path, 1, 10_000);
    return;
  }
  refuseOutside(cap.torqueNm, `${path}.torqueNm`, 1, 10_000);
  refuseOutside(cap.fromRpm, `${path}.fromRpm`, 0, 30_000);
  refuseOutside(cap.toRpm, `${path}.toRpm`, cap.fromRpm ?? 0, 30_000);
}

function checkHotDay(day: Ambient, blower: BlowerQuestion | undefined): void {
  refuseOutside(day.tempC, "hotDay.tempC", -60, 80);
  const lost = (blower?.inletDropKPa ?? 0) + (blower?.chargeCooler?.pressureDropKPa ?? 0);
  refuseOutside(day.pressureKPa, "hotDay.pressureKPa", Math.max(20, lost + 1), 120);
}
