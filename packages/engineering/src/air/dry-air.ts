/** J/(kg·K). */
export const GAS_CONSTANT = 287.055;
/** kJ/(kg·K), below about 150 °C. */
export const AIR_HEAT_CAPACITY = 1.005;
const HEAT_RATIO = 1.4;
/** (γ − 1)/γ. */
export const ISENTROPIC_EXPONENT = (HEAT_RATIO - 1) / HEAT_RATIO;
export const KELVIN_AT_0_C = 273.15;

/** kg/m³ of dry air, from kPa absolute and K. @source Ideal gas. */
export function airDensity(pressureKPa: number, temperatureK: number): number {
  return (pressureKPa * 1_000) / (GAS_CONSTANT * temperatureK);
}

/** kPa absolute of dry air, from kg/m³ and K. @source Ideal gas. */
export function airPressure(densityKgPerM3: number, temperatureK: number): number {
  return (densityKgPerM3 * GAS_CONSTANT * temperatureK) / 1_000;
}

/**
 * kg/s that a four-stroke engine draws from its manifold.
 *
 * @source  Definition of volumetric efficiency, referred to the manifold's density.
 * @vectors shared/reference/blower.json
 */
export function engineAirFlow(
  displacementL: number,
  speedRpm: number,
  volumetricEfficiency: number,
  densityKgPerM3: number,
): number {
  return (volumetricEfficiency * densityKgPerM3 * displacementL * speedRpm) / 120_000;
}
