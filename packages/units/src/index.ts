export { allocateByLargestRemainder } from "./allocate";
export { type BasisPoints, basisPoints } from "./basis-points";
export { type CurrencyCode, currencyCodes, currencyDecimals, isCurrencyCode } from "./currency";
export {
  addDecimals,
  coefficientAt,
  compareDecimals,
  decimalText,
  decimalToNumber,
  type ExactDecimal,
  exactDecimal,
  multiplyDecimals,
  subtractDecimals,
  sumDecimals,
  type WrittenDecimal,
  ZERO,
} from "./exact-decimal";
export { decimalAmount, formatMoney } from "./format-money";
export { ImpossibleInputError } from "./impossible-input-error";
export type { Instant, TimeZoneName } from "./instant";
export { floorQuotient, quotientToNumber, roundedQuotient } from "./integer-quotient";
export { type MinorUnits, minorUnits, sumMinorUnits } from "./minor-units";
export {
  absoluteFromGauge,
  type KilopascalsAbsolute,
  type KilopascalsGauge,
  kilopascalsAbsolute,
  kilopascalsGauge,
} from "./pressure";
export type { Quantity } from "./quantity";
export { ok, type Result, refused } from "./result";
export {
  type Kilowatts,
  kilowatts,
  type NewtonMetres,
  newtonMetres,
  powerFromTorque,
  type RevolutionsPerMinute,
  revolutionsPerMinute,
  torqueFromPower,
} from "./rotation";
export { type Celsius, celsius, type Kelvin, kelvin, kelvinFromCelsius } from "./temperature";
export { unitConvert } from "./unit-convert";
export { type UnitName, unitNames } from "./unit-table";
