import type { Ambient, BlowerQuestion } from "../air/blower-question";
import { deliveredPower } from "../driveline/driveline-loss";
import { type BoostedState, boostedState } from "./boosted-state";
import { boostedTorque } from "./boosted-torque";
import { capAt } from "./cap-at";
import { powerOf } from "./crank-torque";
import { baselineSpread, baselineThere, drivelineOff, reportPlace } from "./driveline-scenario";
import { explainForecastLimit } from "./explain-forecast-limit";
import type { ForecastAssumptions } from "./forecast-assumptions";
import { asExpected, type Deviation, forecastBand } from "./forecast-band";
import type { ForecastPoint, ForecastQuestion } from "./forecast-question";
import { boostShare } from "./spark-retard";

/** The points of a blown build, in the air of the baseline or on another day. */
export function blownForecast(question: ForecastQuestion, blower: BlowerQuestion, use: ForecastAssumptions) {
  return (day: Ambient | null): readonly ForecastPoint[] => {
    const breathing = day ? onDay(blower, day, use) : blower;
    return blower.speedsRpm.map((speed) =>
      forecastPoint(question, boostedState(question, blower, breathing, use, speed), use),
    );
  };
}

/** The blower in the air of a day; the cooler's coolant follows the ambient temperature. */
function onDay(blower: BlowerQuestion, day: Ambient, use: ForecastAssumptions): BlowerQuestion {
  const { chargeCooler, ambient } = blower;
  if (!chargeCooler) return { ...blower, ambient: day };
  const coolantTempC = chargeCooler.coolantTempC + use.coolantFollowsDay * (day.tempC - ambient.tempC);
  return { ...blower, ambient: day, chargeCooler: { ...chargeCooler, coolantTempC } };
}

function forecastPoint(
  question: ForecastQuestion,
  state: BoostedState,
  use: ForecastAssumptions,
): ForecastPoint {
  const { speedRpm, point, fuelDemandKgPerH, fuelLimit } = state;
  const place = reportPlace(question);
  const power = (off: Deviation) => {
    const loss = drivelineOff(use, off);
    const { torqueNm } = boostedTorque(question, state, use, loss, off);
    return deliveredPower(powerOf(torqueNm, speedRpm), speedRpm, place, loss);
  };
  const expected = boostedTorque(question, state, use, drivelineOff(use, asExpected), asExpected);
  return {
    speedRpm,
    baselineKw: baselineThere(question, state.baselineKw, speedRpm, use),
    ...forecastBand(power, {
      ...baselineSpread(question, use),
      air: use.airBandShare,
      retardDeg: use.retardBandDeg * Math.min(1, boostShare(point.boostKPa)),
    }),
    crankTorqueNm: expected.torqueNm,
    limit: expected.limit,
    because: explainForecastLimit(expected.limit, {
      stage: fuelLimit?.kind,
      cap: capAt(question.torqueCaps ?? [], speedRpm)?.name,
    }),
    boostKPa: point.boostKPa,
    manifoldTempC: point.manifoldTempC,
    sparkRetardDeg: state.retardDeg,
    fuelKgPerH: Math.min(fuelDemandKgPerH, fuelLimit?.fuelKgPerH ?? fuelDemandKgPerH),
  };
}
