import { valueAtSpeed } from "../question/speed-curve";
import type { BlowerQuestion } from "./blower-question";
import { ISENTROPIC_EXPONENT, KELVIN_AT_0_C } from "./dry-air";

/** What a blower and a charge cooler make of the air at one engine speed, for any pressure ratio. */
export type ChargePath = {
  readonly inletKPa: number;
  readonly inletK: number;
  readonly adiabaticEfficiency: number;
  readonly coolerEffectiveness: number;
  readonly coolantK: number;
  readonly coolerDropKPa: number;
};

export type ChargeAir = {
  readonly dischargeK: number;
  readonly manifoldK: number;
  readonly manifoldKPa: number;
};

export function chargePath(question: BlowerQuestion, speedRpm: number): ChargePath {
  const { ambient, inletDropKPa = 0, chargeCooler, blower } = question;
  const inletK = ambient.tempC + KELVIN_AT_0_C;
  return {
    inletKPa: ambient.pressureKPa - inletDropKPa,
    inletK,
    adiabaticEfficiency: valueAtSpeed(blower.adiabaticEfficiency, speedRpm),
    coolerEffectiveness: chargeCooler?.effectiveness ?? 0,
    coolantK: chargeCooler ? chargeCooler.coolantTempC + KELVIN_AT_0_C : inletK,
    coolerDropKPa: chargeCooler?.pressureDropKPa ?? 0,
  };
}

/**
 * Air after blower and cooler.
 *
 * @source  Isentropic compression with an adiabatic efficiency; effectiveness of a heat exchanger (textbook
 *          definitions). A coolant warmer than the air heats it.
 * @vectors shared/reference/blower.json
 */
export function chargeAir(path: ChargePath, pressureRatio: number): ChargeAir {
  const rise = (pressureRatio ** ISENTROPIC_EXPONENT - 1) / path.adiabaticEfficiency;
  const dischargeK = path.inletK * (1 + rise);
  return {
    dischargeK,
    manifoldK: dischargeK - path.coolerEffectiveness * (dischargeK - path.coolantK),
    manifoldKPa: pressureRatio * path.inletKPa - path.coolerDropKPa,
  };
}
