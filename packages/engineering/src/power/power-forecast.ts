import { blownForecast } from "./blown-forecast";
import { breathingForecast } from "./breathing-forecast";
import { calibrationForecast } from "./calibration-forecast";
import { checkForecastQuestion } from "./check-forecast-question";
import { reportPlace } from "./driveline-scenario";
import { assumptionsAsUsed, type ForecastAssumptions } from "./forecast-assumptions";
import type {
  Forecast,
  ForecastCurve,
  ForecastKind,
  ForecastPoint,
  ForecastQuestion,
} from "./forecast-question";

/**
 * What a build will make at each speed: low, expected and high, what limits it there, the same on a hot day, and every
 * assumption as used.
 *
 * @source  Common practice of the trade for the form and the usual figures; see docs/engineering/power-forecast.md.
 * @valid   Sweep at full load, four-stroke. Spark ignition with a belt-driven blower, a turbo-diesel whose
 *          calibration alone changes, or spark ignition that breathes more freely.
 * @throws  ImpossibleInputError when the parts of the question do not go together.
 */
export function powerForecast(question: ForecastQuestion): Forecast {
  checkForecastQuestion(question);
  const use = assumptionsAsUsed(question.fuel, question.assumptions);
  const { hotDay } = question;
  const pointsOn = forecaster(question, use);
  return {
    ...curve(pointsOn(null)),
    at: reportPlace(question),
    kind: kindOf(question),
    hotDay: hotDay ? curve(pointsOn(hotDay)) : null,
    assumptions: use,
  };
}

function forecaster(question: ForecastQuestion, use: ForecastAssumptions) {
  if (question.blower) return blownForecast(question, question.blower, use);
  if (question.calibrationChange) return calibrationForecast(question, question.calibrationChange, use);
  if (question.breathingChange) return breathingForecast(question, question.breathingChange, use);
  throw new RangeError("The check leaves one change.");
}

function kindOf({ blower, calibrationChange }: ForecastQuestion): ForecastKind {
  if (blower) return "blower";
  return calibrationChange ? "calibration" : "breathing";
}

function curve(points: readonly ForecastPoint[]): ForecastCurve {
  const best = points.reduce((most, point) => (point.expectedKw > most.expectedKw ? point : most));
  const { speedRpm, lowKw, expectedKw, highKw } = best;
  return { points, peak: { speedRpm, lowKw, expectedKw, highKw } };
}
