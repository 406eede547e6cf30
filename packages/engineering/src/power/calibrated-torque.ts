import type { Ambient } from "../air/blower-question";
import { KELVIN_AT_0_C } from "../air/dry-air";
import { crankPower, type DrivelineLoss } from "../driveline/driveline-loss";
import { checkedFuelSupply } from "../fuel/fuel-supply";
import { valueAtSpeed } from "../question/speed-curve";
import type { LimitedTorque } from "./boosted-torque";
import { capAt } from "./cap-at";
import { powerOf, torqueOf } from "./crank-torque";
import type { ForecastAssumptions } from "./forecast-assumptions";
import type { Deviation } from "./forecast-band";
import type { CalibrationChange, ForecastQuestion, PowerCurve } from "./forecast-question";

/** One speed of the baseline, on a day; the reference day unless another is asked. */
export type CalibratedState = {
  readonly question: ForecastQuestion;
  readonly change: CalibrationChange;
  readonly point: PowerCurve["points"][number];
  readonly day: Ambient;
  readonly use: ForecastAssumptions;
};

/**
 * Torque at the crank of a turbo-diesel on a changed calibration, and what holds it there: the request, smoke, exhaust
 * temperature, fuel supply or a cap. Air and boost stay; only the fuel changes.
 *
 * @source  Common practice, no source: exhaust temperature over the charge rises with fuel per air; burning gets a
 *          little later as the mixture gets richer. Definitions of lambda and specific consumption.
 * @valid   Full load, standard turbocharger. The request is at the crank.
 */
export function calibratedTorque(
  { question, change, point, day, use }: CalibratedState,
  loss: DrivelineLoss,
  off: Deviation,
): LimitedTorque {
  const { speedRpm, powerKw } = point;
  const measured = powerKw * (1 + off.baseline);
  const base = torqueOf(crankPower(measured, speedRpm, question.baseline.at, loss), speedRpm);
  const gross = base / use.mechanicalEfficiency;
  const lambda = use.dieselLambda + off.lambda;
  const more = moreFuel(change, lambda, day, use, off);
  const richLoss = use.dieselRichLoss * (more.ratio / lambda - 1 / lambda);
  const fuelled = gross * more.ratio * (1 - richLoss) - (gross - base);
  const request = valueAtSpeed(change.torqueRequestNm, speedRpm);
  const candidates: LimitedTorque[] = [
    { torqueNm: request, limit: "torque-request" },
    { torqueNm: Math.max(0, fuelled), limit: more.limit },
  ];
  const cap = capAt(question.torqueCaps ?? [], speedRpm);
  if (cap) candidates.push({ torqueNm: cap.torqueNm, limit: "torque-cap" });
  const supplied = suppliedTorque(question, speedRpm, use);
  if (supplied !== null) candidates.push({ torqueNm: supplied, limit: "fuel" });
  return candidates.reduce((least, each) => (each.torqueNm < least.torqueNm ? each : least));
}

/** Fuel over that of the baseline, until it smokes or the exhaust is too hot, in the air of the day. */
function moreFuel(
  change: CalibrationChange,
  lambda: number,
  day: Ambient,
  use: ForecastAssumptions,
  off: Deviation,
): { readonly ratio: number; readonly limit: "smoke" | "exhaust-temperature" } {
  const referenceK = use.referenceTempC + KELVIN_AT_0_C;
  const density = (day.pressureKPa / use.referencePressureKPa) * (referenceK / (day.tempC + KELVIN_AT_0_C));
  const air = density ** use.dieselAirExponent;
  const chargeC = use.dieselChargeC + day.tempC - use.referenceTempC;
  const smoke = (air * lambda) / change.smokeLambda;
  const rise = use.dieselExhaustC + off.exhaustC - use.dieselChargeC;
  const exhaust = (air * Math.max(0, change.exhaustLimitC - chargeC)) / Math.max(1, rise);
  return smoke <= exhaust
    ? { ratio: smoke, limit: "smoke" }
    : { ratio: exhaust, limit: "exhaust-temperature" };
}

function suppliedTorque(
  { fuel, fuelSupply }: ForecastQuestion,
  speedRpm: number,
  use: ForecastAssumptions,
): number | null {
  if (!fuelSupply) return null;
  const { fuelKgPerH } = checkedFuelSupply(fuel, speedRpm, fuelSupply.stages).limit;
  return torqueOf((fuelKgPerH * 1_000) / use.dieselBsfcGPerKwh, speedRpm);
}

/** kg/h at a torque. */
export function dieselFuel(torqueNm: number, speedRpm: number, use: ForecastAssumptions): number {
  return (powerOf(torqueNm, speedRpm) * use.dieselBsfcGPerKwh) / 1_000;
}
