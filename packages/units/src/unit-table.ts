/** One unit: value in the dimension's base unit = (value + offset) × numerator ÷ denominator. */
export type UnitDefinition = {
  readonly dimension: string;
  readonly numerator: string;
  readonly denominator: string;
  readonly offset: string;
};

function unit(dimension: string, numerator: string, denominator = "1", offset = "0"): UnitDefinition {
  return { dimension, numerator, denominator, offset };
}

/**
 * Every factor is written exactly, so that conversion adds no error of its own.
 *
 * @source NIST Special Publication 811 (2008), Appendix B: pound 0.453 592 37 kg, pound-force
 *         4.448 221 615 260 5 N, foot 0.3048 m, mile 1609.344 m, horsepower (550 ft·lbf/s), metric
 *         horsepower 735.498 75 W, conventional inch of mercury 3386.389 Pa.
 */
export const units = {
  kW: unit("power", "1"),
  hp: unit("power", "0.74569987158227022"),
  PS: unit("power", "0.73549875"),
  Nm: unit("torque", "1"),
  lbft: unit("torque", "1.3558179483314004"),
  kPa: unit("pressure", "1"),
  bar: unit("pressure", "100"),
  psi: unit("pressure", "0.0044482216152605", "0.00064516"),
  inHg: unit("pressure", "3.386389"),
  degC: unit("temperature", "1", "1", "273.15"),
  degF: unit("temperature", "5", "9", "459.67"),
  kmh: unit("speed", "1"),
  mph: unit("speed", "1.609344"),
  mm: unit("length", "1"),
  in: unit("length", "25.4"),
  Lph: unit("volume flow", "1"),
  gps: unit("mass flow", "1"),
  lbph: unit("mass flow", "453.59237", "3600"),
  kg: unit("mass", "1"),
  lb: unit("mass", "0.45359237"),
} as const satisfies Record<string, UnitDefinition>;

export type UnitName = keyof typeof units;

export const unitNames = Object.keys(units) as UnitName[]; // the keys of a constant
