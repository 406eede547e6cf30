import { forecastAssumptions, standardAtmosphere } from "@buildproof/engineering";

/** Pressure at an altitude over that at sea level, where every forecast is told. */
export function pressureShareAt(altitudeM: number): number {
  return standardAtmosphere(altitudeM).pressureKPa / standardAtmosphere(0).pressureKPa;
}

/**
 * Share of the forecast's power that is left at an altitude.
 *
 * @source  Spark ignition: SAE J1349, indicated power goes with the pressure, and 0.18 of the brake power is friction
 *          that stays (from memory). Turbo-diesel: the turbocharger makes up for all but a share, common practice, no
 *          source.
 */
export function powerShareAt(altitudeM: number, isDiesel: boolean): number {
  const share = pressureShareAt(altitudeM);
  return isDiesel ? share ** forecastAssumptions.dieselAirExponent[0] : 1.18 * share - 0.18;
}
