import type { Ambient } from "../air/blower-question";
import { deliveredPower } from "../driveline/driveline-loss";
import { checkedFuelSupply } from "../fuel/fuel-supply";
import { type CalibratedState, calibratedTorque, dieselFuel } from "./calibrated-torque";
import { capAt } from "./cap-at";
import { powerOf } from "./crank-torque";
import { baselineSpread, baselineThere, drivelineOff, reportPlace } from "./driveline-scenario";
import { explainForecastLimit } from "./explain-forecast-limit";
import type { ForecastAssumptions } from "./forecast-assumptions";
import { asExpected, type Deviation, forecastBand } from "./forecast-band";
import type { CalibrationChange, ForecastPoint, ForecastQuestion } from "./forecast-question";

/** The points of a turbo-diesel on a changed calibration, at the baseline's speeds. */
export function calibrationForecast(
  question: ForecastQuestion,
  change: CalibrationChange,
  use: ForecastAssumptions,
) {
  const reference = { tempC: use.referenceTempC, pressureKPa: use.referencePressureKPa };
  return (day: Ambient | null): readonly ForecastPoint[] =>
    question.baseline.points.map((point) =>
      forecastPoint({ question, change, point, day: day ?? reference, use }),
    );
}

function forecastPoint(state: CalibratedState): ForecastPoint {
  const { question, point, use } = state;
  const { speedRpm } = point;
  const place = reportPlace(question);
  const torque = (off: Deviation) => calibratedTorque(state, drivelineOff(use, off), off);
  const power = (off: Deviation) =>
    deliveredPower(powerOf(torque(off).torqueNm, speedRpm), speedRpm, place, drivelineOff(use, off));
  const expected = torque(asExpected);
  const { fuelSupply, fuel, torqueCaps = [] } = question;
  return {
    speedRpm,
    baselineKw: baselineThere(question, point.powerKw, speedRpm, use),
    ...forecastBand(power, {
      ...baselineSpread(question, use),
      lambda: use.dieselLambdaBand,
      exhaustC: use.dieselExhaustBandC,
    }),
    crankTorqueNm: expected.torqueNm,
    limit: expected.limit,
    because: explainForecastLimit(expected.limit, {
      stage: fuelSupply ? checkedFuelSupply(fuel, speedRpm, fuelSupply.stages).limit.kind : undefined,
      cap: capAt(torqueCaps, speedRpm)?.name,
    }),
    boostKPa: null,
    manifoldTempC: null,
    sparkRetardDeg: null,
    fuelKgPerH: dieselFuel(expected.torqueNm, speedRpm, use),
  };
}
