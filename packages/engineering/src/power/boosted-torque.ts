import { crankPower, type DrivelineLoss } from "../driveline/driveline-loss";
import { type BoostedState, pumpingTorque } from "./boosted-state";
import { torqueOf } from "./crank-torque";
import type { ForecastAssumptions } from "./forecast-assumptions";
import type { Deviation } from "./forecast-band";
import type { ForecastLimit, ForecastQuestion } from "./forecast-question";
import { sparkEfficiency } from "./spark-retard";

/** Beyond this the trade lowers boost or changes fuel instead. */
const KNOCK_RETARD_DEG = 20;

export type LimitedTorque = { readonly torqueNm: number; readonly limit: ForecastLimit };

/**
 * Torque at the crank of the boosted engine, and what holds it there. The baseline's gross indicated torque is scaled
 * by air, spark, mixture and heat; friction and blower are taken off afterwards, because they do not grow with the air.
 *
 * @source  Common practice (form); definitions of indicated and brake torque.
 */
export function boostedTorque(
  question: ForecastQuestion,
  state: BoostedState,
  use: ForecastAssumptions,
  loss: DrivelineLoss,
  off: Deviation,
): LimitedTorque {
  const { speedRpm, frictionNm, fuelDemandKgPerH, fuelLimit } = state;
  const air = 1 + off.air;
  const baselineKw = state.baselineKw * (1 + off.baseline);
  const grossBaseline =
    torqueOf(crankPower(baselineKw, speedRpm, question.baseline.at, loss), speedRpm) + frictionNm;
  const retardDeg = state.retardDeg + off.retardDeg;
  const gross = grossBaseline * state.airRatio * air * sparkRatio(retardDeg, use) * state.burnRatio;
  // Air that has no fuel is held back before the blower, which then takes less too.
  const fuelShare = fuelLimit ? Math.min(1, fuelLimit.fuelKgPerH / (fuelDemandKgPerH * air)) : 1;
  const pumpingNm = pumpingTorque(state, use, fuelShare);
  const taken = state.blowerNm * fuelShare + use.boostedFrictionFactor * frictionNm;
  const withFuel = Math.max(0, gross * fuelShare + pumpingNm - taken);
  const { cap } = state;
  if (cap && cap.torqueNm < withFuel) return { torqueNm: cap.torqueNm, limit: "torque-cap" };
  return { torqueNm: withFuel, limit: fuelShare < 1 ? "fuel" : ownLimit(state, use) };
}

/** Where nothing trims the air: what a calibrator would look at first. */
function ownLimit({ point, retardDeg }: BoostedState, use: ForecastAssumptions): ForecastLimit {
  if (point.overspeed || point.beltOverspeed) return "blower-speed";
  if (point.manifoldTempC > use.chargeStopC) return "charge-temperature";
  return retardDeg > KNOCK_RETARD_DEG ? "knock" : "air";
}

function sparkRatio(retardDeg: number, use: ForecastAssumptions): number {
  return (
    sparkEfficiency(retardDeg, use.sparkLossPerDeg2) /
    sparkEfficiency(use.baselineRetardDeg, use.sparkLossPerDeg2)
  );
}
