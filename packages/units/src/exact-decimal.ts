/** The decimal as it was written: coefficient ÷ 10^scale, exactly. Sums and comparisons never round. */
export type ExactDecimal = { readonly coefficient: bigint; readonly scale: number };

/** A decimal as people and JSON write it. */
export type WrittenDecimal = number | string;

const WRITTEN = /^([+-]?)(\d+)(?:\.(\d+))?(?:e([+-]?\d{1,4}))?$/i;

/**
 * Reads a decimal as written: 0.1 is one tenth and not the nearest binary fraction. A number is read
 * through its shortest decimal form, which is what was typed for up to 15 significant digits.
 */
export function exactDecimal(written: WrittenDecimal): ExactDecimal {
  if (Number.isSafeInteger(written)) return { coefficient: BigInt(written), scale: 0 };
  const parts = WRITTEN.exec(String(written).trim());
  if (!parts) throw new RangeError(`${written} is not a decimal number.`);
  const [, sign, whole = "", fraction = "", exponent = "0"] = parts;
  const coefficient = BigInt(whole + fraction) * (sign === "-" ? -1n : 1n);
  const scale = fraction.length - Number(exponent);
  return scale < 0 ? { coefficient: coefficient * 10n ** BigInt(-scale), scale: 0 } : { coefficient, scale };
}

export const ZERO: ExactDecimal = { coefficient: 0n, scale: 0 };

export function addDecimals(a: ExactDecimal, b: ExactDecimal): ExactDecimal {
  const scale = Math.max(a.scale, b.scale);
  return { coefficient: coefficientAt(a, scale) + coefficientAt(b, scale), scale };
}

export function subtractDecimals(a: ExactDecimal, b: ExactDecimal): ExactDecimal {
  return addDecimals(a, { coefficient: -b.coefficient, scale: b.scale });
}

export function multiplyDecimals(a: ExactDecimal, b: ExactDecimal): ExactDecimal {
  return { coefficient: a.coefficient * b.coefficient, scale: a.scale + b.scale };
}

export function sumDecimals(terms: Iterable<ExactDecimal>): ExactDecimal {
  let sum = ZERO;
  for (const term of terms) sum = addDecimals(sum, term);
  return sum;
}

/** Negative, zero or positive as a is less than, equal to or greater than b. */
export function compareDecimals(a: ExactDecimal, b: ExactDecimal): number {
  const difference = subtractDecimals(a, b).coefficient;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}

/** Plain decimal notation without a trailing zero: "12.5", "-0.003". */
export function decimalText(value: ExactDecimal): string {
  const digits = (value.coefficient < 0n ? -value.coefficient : value.coefficient)
    .toString()
    .padStart(value.scale + 1, "0");
  const cut = digits.length - value.scale;
  const fraction = digits.slice(cut).replace(/0+$/, "");
  const sign = value.coefficient < 0n ? "-" : "";
  return sign + digits.slice(0, cut) + (fraction === "" ? "" : `.${fraction}`);
}

/** The number nearest to the exact decimal; prints as that decimal for up to 15 significant digits. */
export function decimalToNumber(value: ExactDecimal): number {
  return Number(decimalText(value));
}

/** The coefficient of the same value at a larger scale. */
export function coefficientAt(value: ExactDecimal, scale: number): bigint {
  return value.coefficient * 10n ** BigInt(scale - value.scale);
}
