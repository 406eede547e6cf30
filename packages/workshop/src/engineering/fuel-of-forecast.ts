import {
  blower,
  type Forecast,
  type ForecastAssumptions,
  type ForecastQuestion,
  fuelDemand,
  fuelProperties,
} from "@buildproof/engineering";
import { fuelMargins, type LoadMargins } from "./fuel-margins";
import type { OwnAssumptions } from "./own-assumptions";

/** The fuel system under a forecast, and the demand told two ways, which should agree. */
export type ForecastFuel = {
  readonly sweep: LoadMargins;
  readonly sustained: LoadMargins;
  readonly demand: {
    readonly speedRpm: number;
    /** Null for a diesel, whose air is not forecast. */
    readonly fromAirKgPerH: number | null;
    readonly fromPowerKgPerH: number;
    readonly bsfcGPerKwh: number;
  };
};

/** `free` is the forecast that no fuel stage and no cap holds back: what the engine would burn. */
export function fuelOfForecast(
  question: ForecastQuestion,
  free: Forecast,
  use: ForecastAssumptions & OwnAssumptions,
): ForecastFuel {
  const air = airOf(question, free, use);
  const sweep = [3_000, 6_000].map((speedRpm) => ({ speedRpm, value: mixture(question, use, speedRpm) }));
  const held = question.blower ? use.sustainedEnrichment : 0;
  const stages = question.fuelSupply?.stages ?? [];
  const margins = fuelMargins({
    fuel: question.fuel,
    stages,
    air,
    sweepLambda: sweep,
    sustainedLambda: sweep.map(({ speedRpm, value }) => ({ speedRpm, value: value - held })),
  });
  return { ...margins, demand: demandAtPeak(question, free, use) };
}

/** The mixture lies on the line through the figures at 3,000 and 6,000 rpm, and holds beyond them. */
function mixture(
  { calibrationChange, breathingChange }: ForecastQuestion,
  use: ForecastAssumptions,
  speedRpm: number,
): number {
  if (calibrationChange) return calibrationChange.smokeLambda;
  if (breathingChange) return breathingChange.lambda ?? use.baselineLambda;
  return speedRpm === 3_000 ? use.boostedLambdaAt3000 : use.boostedLambdaAt6000;
}

/** Of an engine without a blower, the air that goes with its fuel at the smoke limit. */
function airOf(
  { blower: build, fuel, calibrationChange, breathingChange }: ForecastQuestion,
  free: Forecast,
  use: ForecastAssumptions,
) {
  if (build) return blower(build).points;
  const lambda = calibrationChange?.smokeLambda ?? breathingChange?.lambda ?? use.baselineLambda;
  const perFuel = fuelProperties[fuel].stoichiometricAirFuelRatio * lambda;
  return free.points.map(({ speedRpm, fuelKgPerH }) => ({
    speedRpm,
    airMassFlowKgPerS: (fuelKgPerH * perFuel) / 3_600,
  }));
}

function demandAtPeak(
  { fuel }: ForecastQuestion,
  { points, peak, kind }: Forecast,
  use: ForecastAssumptions & OwnAssumptions,
): ForecastFuel["demand"] {
  const at = points.find(({ speedRpm }) => speedRpm === peak.speedRpm);
  if (!at) throw new RangeError("The peak is one of the points.");
  const petrolGPerKwh = kind === "blower" ? use.boostedBsfcGPerKwh : use.breathingBsfcGPerKwh;
  const bsfcGPerKwh =
    kind !== "calibration"
      ? (petrolGPerKwh * fuelProperties.petrol.heatMJPerKg) / fuelProperties[fuel].heatMJPerKg
      : use.dieselBsfcGPerKwh;
  const brakePowerKw = (at.crankTorqueNm * 2 * Math.PI * at.speedRpm) / 60_000;
  return {
    speedRpm: at.speedRpm,
    fromAirKgPerH: kind !== "calibration" ? at.fuelKgPerH : null,
    fromPowerKgPerH: fuelDemand({ fuel, brakePowerKw, bsfcGPerKwh }).fuelKgPerH,
    bsfcGPerKwh,
  };
}
