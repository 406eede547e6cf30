import { checkedBlowerPoint } from "../air/blower";
import type { BlowerPoint, BlowerQuestion } from "../air/blower-question";
import { airDensity, engineAirFlow, KELVIN_AT_0_C } from "../air/dry-air";
import { fuelForAir } from "../fuel/fuel-demand";
import { type Fuel, fuelProperties } from "../fuel/fuel-properties";
import { checkedFuelSupply, type FuelLimit } from "../fuel/fuel-supply";
import { interpolate } from "../question/interpolate";
import { valueAtSpeed } from "../question/speed-curve";
import { capAt } from "./cap-at";
import { torqueOf } from "./crank-torque";
import type { ForecastAssumptions } from "./forecast-assumptions";
import type { ForecastQuestion, TorqueCap } from "./forecast-question";
import { sparkRetard } from "./spark-retard";

/** Everything about one speed that does not depend on how far the uncertain figures are off. */
export type BoostedState = {
  readonly speedRpm: number;
  readonly baselineKw: number;
  readonly point: BlowerPoint;
  /** Boosted air over the baseline's own air. */
  readonly airRatio: number;
  readonly retardDeg: number;
  /** Torque of the same air over the baseline's, by its mixture and by the heat of its fuel. */
  readonly burnRatio: number;
  readonly fuelDemandKgPerH: number;
  readonly fuelLimit: FuelLimit | null;
  readonly cap: TorqueCap | null;
  readonly frictionNm: number;
  readonly blowerNm: number;
  readonly displacementL: number;
  readonly manifoldKPa: number;
  readonly baselineManifoldKPa: number;
};

/** Torque of a four-stroke from mean pressure: kPa × L/(4π). */
export function torqueOfMeanPressure(pressureKPa: number, displacementL: number): number {
  return (pressureKPa * displacementL) / (4 * Math.PI);
}

/**
 * The boosted engine at one speed.
 *
 * @source  Common practice: the air ratio is over the baseline's own air, whose manifold is a little below and warmer
 *          than ambient; friction 1.2 to 1.4 bar at 3,000 and 1.8 at 6,000 rpm; pumping credit 0.7 of the pressure rise
 *          less that of the exhaust. Torque of mean pressure: definition.
 */
export function boostedState(
  question: ForecastQuestion,
  reference: BlowerQuestion,
  blower: BlowerQuestion,
  use: ForecastAssumptions,
  speedRpm: number,
): BoostedState {
  const { displacementL } = blower.engine;
  const point = checkedBlowerPoint(blower, speedRpm);
  const base = baselineAir(reference, use, speedRpm);
  const airRatio = point.airMassFlowKgPerS / base.flowKgPerS;
  const lambda = alongSpeed(use.boostedLambdaAt3000, use.boostedLambdaAt6000, speedRpm);
  const { fuel, fuelSupply } = question;
  const driveKw = point.bypass ? use.bypassDriveKw : point.drivePowerKw;
  return {
    speedRpm,
    baselineKw: baselinePower(question, speedRpm),
    point,
    airRatio,
    retardDeg: sparkRetard(question, use, point.boostKPa, point.manifoldTempC),
    burnRatio: mixtureRatio(lambda, use) * heatRatio(fuel),
    fuelDemandKgPerH: fuelForAir(fuel, point.airMassFlowKgPerS, lambda),
    fuelLimit: fuelSupply ? checkedFuelSupply(fuel, speedRpm, fuelSupply.stages).limit : null,
    cap: capAt(question.torqueCaps ?? [], speedRpm),
    frictionNm: torqueOfMeanPressure(
      100 * Math.max(0, alongSpeed(use.frictionBarAt3000, use.frictionBarAt6000, speedRpm)),
      displacementL,
    ),
    blowerNm: torqueOf(driveKw, speedRpm),
    baselineManifoldKPa: base.manifoldKPa,
    manifoldKPa: point.boostKPa + blower.ambient.pressureKPa,
    displacementL,
  };
}

/**
 * Torque that the higher pressure in the manifold gives back, less what the exhaust takes; `share` of the air is used.
 *
 * @source  Common practice: 0.7 of the difference; back-pressure grows with the square of the flow.
 */
export function pumpingTorque(state: BoostedState, use: ForecastAssumptions, share: number): number {
  const { speedRpm, airRatio, manifoldKPa, baselineManifoldKPa, displacementL } = state;
  const exhaustRise = use.backPressureKPaAt6000 * (speedRpm / 6_000) ** 2 * ((airRatio * share) ** 2 - 1);
  const manifoldRise = manifoldKPa * share - baselineManifoldKPa;
  return torqueOfMeanPressure(use.pumpingShare * (manifoldRise - exhaustRise), displacementL);
}

/** What the engine breathed when the baseline was made: its own filling, before boost improved it. */
function baselineAir({ engine, ambient }: BlowerQuestion, use: ForecastAssumptions, speedRpm: number) {
  const manifoldKPa = ambient.pressureKPa - use.baselineManifoldDropKPa;
  const density = airDensity(manifoldKPa, ambient.tempC + use.baselineChargeRiseC + KELVIN_AT_0_C);
  const filling = valueAtSpeed(engine.volumetricEfficiency, speedRpm) / use.boostedFillingGain;
  return { manifoldKPa, flowKgPerS: engineAirFlow(engine.displacementL, speedRpm, filling, density) };
}

function baselinePower({ baseline }: ForecastQuestion, speedRpm: number): number {
  return interpolate(
    baseline.points,
    (point) => point.speedRpm,
    ({ powerKw }) => powerKw,
    speedRpm,
  );
}

/** On the straight line through the figures at 3,000 and 6,000 rpm; mixture and friction both lie near one. */
export function alongSpeed(at3000: number, at6000: number, speedRpm: number): number {
  return at3000 + ((at6000 - at3000) * (speedRpm - 3_000)) / 3_000;
}

function mixtureRatio(lambda: number, use: ForecastAssumptions): number {
  return mixtureEfficiency(lambda, use) / mixtureEfficiency(use.baselineLambda, use);
}

export function mixtureEfficiency(lambda: number, use: ForecastAssumptions): number {
  return Math.max(0.5, 1 - use.mixtureLoss * (lambda - use.bestLambda) ** 2);
}

/** Heat that a kilogram of air can burn, over that of petrol, on which the baseline was made. */
function heatRatio(fuel: Fuel): number {
  return heatPerAir(fuel) / heatPerAir("petrol");
}

function heatPerAir(fuel: Fuel): number {
  const { heatMJPerKg, stoichiometricAirFuelRatio } = fuelProperties[fuel];
  return heatMJPerKg / stoichiometricAirFuelRatio;
}
