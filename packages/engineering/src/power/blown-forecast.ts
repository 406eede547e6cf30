import type { Ambient, BlowerQuestion } from "../air/blower-question";
import { type DrivelineLoss, deliveredPower } from "../driveline/driveline-loss";
import { type BoostedState, boostedState } from "./boosted-state";
import { boostedTorque } from "./boosted-torque";
import { powerOf } from "./crank-torque";
import { baselineSpread, baselineThere, drivelineOff, reportPlace } from "./driveline-scenario";
import { explainForecastLimit } from "./explain-forecast-limit";
import type { ForecastAssumptions } from "./forecast-assumptions";
import { asExpected, type Deviation, forecastBand, type Spread } from "./forecast-band";
import type { ForecastPoint, ForecastQuestion } from "./forecast-question";
import { boostShare } from "./spark-retard";

/** The points of a blown build, in the air of the baseline or on another day. */
export function blownForecast(question: ForecastQuestion, blower: BlowerQuestion, use: ForecastAssumptions) {
  const loss = drivelineOff(use, asExpected);
  const spread = baselineSpread(question, use);
  return (day: Ambient | null): readonly ForecastPoint[] => {
    const breathing = day ? onDay(blower, day, use) : blower;
    return blower.speedsRpm.map((speed) =>
      forecastPoint({ question, use, loss, spread }, boostedState(question, blower, breathing, use, speed)),
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

/** What is the same at every speed, made once. */
type Fixed = {
  readonly question: ForecastQuestion;
  readonly use: ForecastAssumptions;
  readonly loss: DrivelineLoss;
  readonly spread: Spread;
};

function forecastPoint({ question, use, loss, spread }: Fixed, state: BoostedState): ForecastPoint {
  const { speedRpm, point, fuelDemandKgPerH, fuelLimit } = state;
  const place = reportPlace(question);
  const power = (off: Deviation) => {
    const lost = off.mesh === 0 && off.dragKw === 0 ? loss : drivelineOff(use, off);
    const { torqueNm } = boostedTorque(question, state, use, lost, off);
    return deliveredPower(powerOf(torqueNm, speedRpm), speedRpm, place, lost);
  };
  const expected = boostedTorque(question, state, use, loss, asExpected);
  const { lowKw, expectedKw, highKw } = forecastBand(power, {
    baseline: spread.baseline,
    mesh: spread.mesh,
    dragKw: spread.dragKw,
    air: use.airBandShare,
    retardDeg: use.retardBandDeg * Math.min(1, boostShare(point.boostKPa)),
  });
  return {
    speedRpm,
    baselineKw: baselineThere(question, state.baselineKw, speedRpm, use),
    lowKw,
    expectedKw,
    highKw,
    crankTorqueNm: expected.torqueNm,
    limit: expected.limit,
    because: explainForecastLimit(expected.limit, {
      stage: fuelLimit?.kind,
      cap: state.cap?.name,
    }),
    boostKPa: point.boostKPa,
    manifoldTempC: point.manifoldTempC,
    sparkRetardDeg: state.retardDeg,
    fuelKgPerH: Math.min(fuelDemandKgPerH, fuelLimit?.fuelKgPerH ?? fuelDemandKgPerH),
  };
}
