import {
  addDecimals,
  coefficientAt,
  compareDecimals,
  type ExactDecimal,
  exactDecimal,
  multiplyDecimals,
  subtractDecimals,
  ZERO,
} from "./exact-decimal";
import { ImpossibleInputError } from "./impossible-input-error";
import { quotientToNumber } from "./integer-quotient";
import { type UnitName, units } from "./unit-table";

/**
 * Converts a value between two units of one dimension. The arithmetic is exact; the answer is the
 * number nearest to the exact result.
 *
 * @source unit-table.ts
 * @vectors shared/reference/unit-convert.json
 */
export function unitConvert(value: number, from: UnitName, to: UnitName): number {
  const source = units[from];
  const target = units[to];
  if (source.dimension !== target.dimension) {
    throw new ImpossibleInputError(
      "different-dimensions",
      `${from} is a unit of ${source.dimension} and ${to} of ${target.dimension}: choose two units of one kind.`,
      "to",
    );
  }
  const shifted = addDecimals(exactDecimal(value), exactDecimal(source.offset));
  if (source.dimension === "temperature" && compareDecimals(shifted, ZERO) < 0) {
    throw new ImpossibleInputError(
      "below-absolute-zero",
      `${value} ${from} is below absolute zero: check the value and its unit.`,
      "value",
    );
  }
  const numerator = multiplyDecimals(
    shifted,
    multiplyDecimals(exactDecimal(source.numerator), exactDecimal(target.denominator)),
  );
  const denominator = multiplyDecimals(exactDecimal(source.denominator), exactDecimal(target.numerator));
  const converted = quotientLess(numerator, denominator, exactDecimal(target.offset));
  if (!Number.isFinite(converted)) {
    throw new ImpossibleInputError(
      "too-large",
      `${value} ${from} is too large to express in ${to}.`,
      "value",
    );
  }
  return converted;
}

/** numerator ÷ denominator − offset, rounded once, at the end. */
function quotientLess(numerator: ExactDecimal, denominator: ExactDecimal, offset: ExactDecimal): number {
  const above = subtractDecimals(numerator, multiplyDecimals(offset, denominator));
  const scale = Math.max(above.scale, denominator.scale);
  return quotientToNumber(coefficientAt(above, scale), coefficientAt(denominator, scale));
}
