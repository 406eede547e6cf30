import type { Ambient } from "../air/blower-question";
import { airDensity, engineAirFlow, KELVIN_AT_0_C } from "../air/dry-air";
import { crankPower, type DrivelineLoss, deliveredPower } from "../driveline/driveline-loss";
import { fuelForAir } from "../fuel/fuel-demand";
import { checkedFuelSupply } from "../fuel/fuel-supply";
import { valueAtSpeed } from "../question/speed-curve";
import { alongSpeed, mixtureEfficiency, torqueOfMeanPressure } from "./boosted-state";
import type { LimitedTorque } from "./boosted-torque";
import { capAt } from "./cap-at";
import { powerOf, torqueOf } from "./crank-torque";
import { baselineSpread, baselineThere, drivelineOff, reportPlace } from "./driveline-scenario";
import { explainForecastLimit } from "./explain-forecast-limit";
import type { ForecastAssumptions } from "./forecast-assumptions";
import { asExpected, type Deviation, forecastBand } from "./forecast-band";
import type { BreathingChange, ForecastPoint, ForecastQuestion, PowerCurve } from "./forecast-question";
import { sparkEfficiency } from "./spark-retard";

type State = {
  readonly question: ForecastQuestion;
  readonly change: BreathingChange;
  readonly point: PowerCurve["points"][number];
  readonly day: Ambient | null;
  readonly use: ForecastAssumptions;
};

/** The points of an engine that breathes by itself with a freer exhaust or a calibration, at the baseline's speeds. */
export function breathingForecast(
  question: ForecastQuestion,
  change: BreathingChange,
  use: ForecastAssumptions,
) {
  return (day: Ambient | null): readonly ForecastPoint[] =>
    question.baseline.points.map((point) => forecastPoint({ question, change, point, day, use }));
}

function forecastPoint(state: State): ForecastPoint {
  const { question, change, point, use } = state;
  const { speedRpm } = point;
  const place = reportPlace(question);
  const torque = (off: Deviation) => breathingTorque(state, drivelineOff(use, off), off);
  const power = (off: Deviation) =>
    deliveredPower(powerOf(torque(off).torqueNm, speedRpm), speedRpm, place, drivelineOff(use, off));
  const expected = torque(asExpected);
  const { fuelSupply, fuel, torqueCaps = [] } = question;
  const limit = fuelSupply && checkedFuelSupply(fuel, speedRpm, fuelSupply.stages).limit;
  const demandKgPerH = fuelAsked(state);
  return {
    speedRpm,
    baselineKw: baselineThere(question, point.powerKw, speedRpm, use),
    ...forecastBand(power, { ...baselineSpread(question, use), air: use.airBandShare }),
    crankTorqueNm: expected.torqueNm,
    limit: expected.limit,
    because:
      expected.limit === "air"
        ? "The engine draws no more air at this speed."
        : explainForecastLimit(expected.limit, {
            stage: limit?.kind,
            cap: capAt(torqueCaps, speedRpm)?.name,
          }),
    boostKPa: null,
    manifoldTempC: null,
    sparkRetardDeg: change.retardDeg ?? use.baselineRetardDeg,
    fuelKgPerH: Math.min(demandKgPerH, limit?.fuelKgPerH ?? demandKgPerH),
  };
}

/**
 * Torque at the crank. The baseline's gross indicated torque is scaled by air, spark and mixture; friction stays, and
 * a freer exhaust gives back part of its pressure.
 *
 * @source  Common practice (form), as for a boosted engine; air over that of the reference day as SAE J1349 corrects
 *          it: pressure, and the root of the temperature.
 * @valid   Spark ignition at full load without boost.
 */
function breathingTorque(state: State, loss: DrivelineLoss, off: Deviation): LimitedTorque {
  const { question, change, point, use } = state;
  const { speedRpm, powerKw } = point;
  const measuredKw = powerKw * (1 + off.baseline);
  const base = torqueOf(crankPower(measuredKw, speedRpm, question.baseline.at, loss), speedRpm);
  const frictionBar = Math.max(0, alongSpeed(use.frictionBarAt3000, use.frictionBarAt6000, speedRpm));
  const frictionNm = torqueOfMeanPressure(100 * frictionBar, change.displacementL);
  const air = airShare(state) * (1 + off.air);
  const gross = (base + frictionNm) * air * sparkRatio(state) * mixtureRatio(state);
  const exhaustKPa =
    (use.backPressureKPaAt6000 - (change.backPressureKPaAt6000 ?? use.backPressureKPaAt6000) * air ** 2) *
    (speedRpm / 6_000) ** 2;
  const backNm = torqueOfMeanPressure(use.pumpingShare * exhaustKPa, change.displacementL);
  const { fuel, fuelSupply, torqueCaps = [] } = question;
  const supplied = fuelSupply && checkedFuelSupply(fuel, speedRpm, fuelSupply.stages).limit.fuelKgPerH;
  const fuelShare = supplied ? Math.min(1, supplied / (fuelAsked(state) * (1 + off.air))) : 1;
  const torqueNm = Math.max(0, gross * fuelShare + backNm - frictionNm);
  const cap = capAt(torqueCaps, speedRpm);
  if (cap && cap.torqueNm < torqueNm) return { torqueNm: cap.torqueNm, limit: "torque-cap" };
  return { torqueNm, limit: fuelShare < 1 ? "fuel" : "air" };
}

/** Air over the baseline's own: what fills better, in the air of the day. */
function airShare({ change, point, day, use }: State): number {
  const filling = valueAtSpeed(change.fillingGain ?? 1, point.speedRpm);
  if (!day) return filling;
  const kelvin = (tempC: number) => tempC + KELVIN_AT_0_C;
  const heat = Math.sqrt(kelvin(use.referenceTempC) / kelvin(day.tempC));
  return filling * (day.pressureKPa / use.referencePressureKPa) * heat;
}

function sparkRatio({ change, use }: State): number {
  const at = (retardDeg: number) => sparkEfficiency(retardDeg, use.sparkLossPerDeg2);
  return at(change.retardDeg ?? use.baselineRetardDeg) / at(use.baselineRetardDeg);
}

function mixtureRatio({ change, use }: State): number {
  return (
    mixtureEfficiency(change.lambda ?? use.baselineLambda, use) / mixtureEfficiency(use.baselineLambda, use)
  );
}

/** kg/h, from the air that the engine draws at its own filling. */
function fuelAsked(state: State): number {
  const { question, change, point, use } = state;
  const density = airDensity(
    use.referencePressureKPa - use.baselineManifoldDropKPa,
    use.referenceTempC + use.baselineChargeRiseC + KELVIN_AT_0_C,
  );
  const filling = valueAtSpeed(change.volumetricEfficiency, point.speedRpm);
  const flow = engineAirFlow(change.displacementL, point.speedRpm, filling, density) * airShare(state);
  return fuelForAir(question.fuel, flow, change.lambda ?? use.baselineLambda);
}
