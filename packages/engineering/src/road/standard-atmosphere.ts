import { airDensity, KELVIN_AT_0_C } from "../air/dry-air";
import { refuseOutside } from "../question/refuse-outside";

const SEA_LEVEL_KPA = 101.325;
const SEA_LEVEL_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
/** g/(R·lapse). */
const EXPONENT = 9.80665 / (287.05287 * LAPSE_K_PER_M);

export type StandardAir = {
  readonly pressureKPa: number;
  readonly tempC: number;
  readonly densityKgPerM3: number;
};

/**
 * Dry air at an altitude, for a road or a plausibility check; never instead of a barometer at the dyno.
 * With the day's temperature the density is that of the standard pressure at that temperature.
 *
 * @source  ISO 2533:1975, geopotential metres, -5 to 11 km; constants from memory.
 * @vectors shared/reference/standard-atmosphere.json
 */
export function standardAtmosphere(altitudeM: number, dayTempC?: number): StandardAir {
  refuseOutside(altitudeM, "altitudeM", -5_000, 11_000);
  refuseOutside(dayTempC, "dayTempC", -60, 60);
  const standardK = SEA_LEVEL_K - LAPSE_K_PER_M * altitudeM;
  const pressureKPa = SEA_LEVEL_KPA * (standardK / SEA_LEVEL_K) ** EXPONENT;
  const temperatureK = dayTempC === undefined ? standardK : dayTempC + KELVIN_AT_0_C;
  return {
    pressureKPa,
    tempC: temperatureK - KELVIN_AT_0_C,
    densityKgPerM3: airDensity(pressureKPa, temperatureK),
  };
}
