import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import { type Fuel, fuelProperties } from "./fuel-properties";

/** Exactly one of the two ways: power with its specific consumption, or air with its mixture. */
export type FuelDemandQuestion = {
  readonly fuel: Fuel;
  /** At the crank, the blower's drive already taken off. */
  readonly brakePowerKw?: number | undefined;
  readonly bsfcGPerKwh?: number | undefined;
  readonly airMassFlowKgPerS?: number | undefined;
  /** Air over the air that burns the fuel exactly: below 1 is rich. */
  readonly lambda?: number | undefined;
};

export type FuelDemand = { readonly fuelKgPerH: number; readonly fuelLPerH: number };

/**
 * Fuel an engine burns, without any margin.
 *
 * @source  Definitions of brake specific fuel consumption and of lambda.
 * @valid   Steady load. Specific consumption belongs to the net power at the crank.
 * @vectors shared/reference/fuel.json
 * @throws  ImpossibleInputError unless exactly one way is given, in plausible figures.
 */
export function fuelDemand(question: FuelDemandQuestion): FuelDemand {
  const { brakePowerKw, bsfcGPerKwh, airMassFlowKgPerS, lambda, fuel } = question;
  refuseOutside(brakePowerKw, "brakePowerKw", 0, 10_000);
  refuseOutside(bsfcGPerKwh, "bsfcGPerKwh", 100, 2_000);
  refuseOutside(airMassFlowKgPerS, "airMassFlowKgPerS", 0, 20);
  refuseOutside(lambda, "lambda", 0.3, 20);
  const byPower = brakePowerKw !== undefined || bsfcGPerKwh !== undefined;
  const byAir = airMassFlowKgPerS !== undefined || lambda !== undefined;
  if (byPower === byAir) throw oneWay("brakePowerKw");
  const fuelKgPerH = byPower
    ? fromPower(brakePowerKw, bsfcGPerKwh)
    : fromAir(fuel, airMassFlowKgPerS, lambda);
  return { fuelKgPerH, fuelLPerH: fuelKgPerH / fuelProperties[fuel].densityKgPerL };
}

function fromPower(powerKw: number | undefined, bsfcGPerKwh: number | undefined): number {
  if (powerKw === undefined || bsfcGPerKwh === undefined) {
    throw oneWay(powerKw === undefined ? "brakePowerKw" : "bsfcGPerKwh");
  }
  return (powerKw * bsfcGPerKwh) / 1_000;
}

function fromAir(fuel: Fuel, airKgPerS: number | undefined, lambda: number | undefined): number {
  if (airKgPerS === undefined || lambda === undefined) {
    throw oneWay(airKgPerS === undefined ? "airMassFlowKgPerS" : "lambda");
  }
  return fuelForAir(fuel, airKgPerS, lambda);
}

/** kg/h of fuel that goes with an air flow in kg/s. */
export function fuelForAir(fuel: Fuel, airKgPerS: number, lambda: number): number {
  return (airKgPerS * 3_600) / (fuelProperties[fuel].stoichiometricAirFuelRatio * lambda);
}

function oneWay(path: string): ImpossibleInputError {
  return new ImpossibleInputError(
    "one-way",
    "Give exactly one pair: brakePowerKw with bsfcGPerKwh, or airMassFlowKgPerS with lambda.",
    path,
  );
}
