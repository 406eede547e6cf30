export const fuels = ["petrol", "E10", "E85", "diesel"] as const;
export type Fuel = (typeof fuels)[number];

export type FuelProperties = {
  /** Air to fuel by mass at lambda 1. */
  readonly stoichiometricAirFuelRatio: number;
  /** At about 15 °C. */
  readonly densityKgPerL: number;
  /** Lower heating value. */
  readonly heatMJPerKg: number;
};

/**
 * Air to fuel ratio, density and heat. Retail "E85" holds anything from 51 to 83 % ethanol: measure it.
 *
 * @source  US DOE AFDC, Properties of Fuels: petrol 14.7, ethanol 9.0; heat 43.440, diesel 42.784. E10 and E85 by mass balance from these with
 *          0.745 and 0.789 kg/L. Diesel 14.5 from the composition CH1.8; densities within the AFDC ranges.
 * @vectors shared/reference/fuel.json
 */
export const fuelProperties: Readonly<Record<Fuel, FuelProperties>> = {
  petrol: { stoichiometricAirFuelRatio: 14.7, densityKgPerL: 0.745, heatMJPerKg: 43.44 },
  E10: { stoichiometricAirFuelRatio: 14.1, densityKgPerL: 0.7494, heatMJPerKg: 41.704 },
  E85: { stoichiometricAirFuelRatio: 9.814, densityKgPerL: 0.7824, heatMJPerKg: 29.305 },
  diesel: { stoichiometricAirFuelRatio: 14.5, densityKgPerL: 0.85, heatMJPerKg: 42.784 },
};
