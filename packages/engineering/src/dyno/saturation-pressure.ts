import { type Kelvin, type KilopascalsAbsolute, kilopascalsAbsolute } from "@buildproof/units";

const CRITICAL_TEMPERATURE_K = 647.096;
const CRITICAL_PRESSURE_KPA = 22_064;
const TERMS: readonly (readonly [coefficient: number, exponent: number])[] = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
];

/**
 * Pressure of water vapour in equilibrium with liquid water.
 *
 * @source  W. Wagner and A. Pruß, J. Phys. Chem. Ref. Data 31 (2002), equation 2.5; IAPWS SR1-86 (1992).
 * @valid   273.16 K to 647.096 K. Below, it is carried on for supercooled water.
 * @vectors shared/reference/vapour-pressure.json
 */
export function saturationPressure(temperature: Kelvin): KilopascalsAbsolute {
  if (temperature <= 0 || temperature > CRITICAL_TEMPERATURE_K) {
    throw new RangeError(`There is no saturation pressure of water at ${temperature} K.`);
  }
  const distance = 1 - temperature / CRITICAL_TEMPERATURE_K;
  const series = TERMS.reduce((sum, [coefficient, exponent]) => sum + coefficient * distance ** exponent, 0);
  return kilopascalsAbsolute(
    CRITICAL_PRESSURE_KPA * Math.exp((CRITICAL_TEMPERATURE_K / temperature) * series),
  );
}
