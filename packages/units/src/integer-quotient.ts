/** The quotient rounded down, towards minus infinity (bigint division alone truncates towards zero). */
export function floorQuotient(numerator: bigint, denominator: bigint): bigint {
  if (denominator === 0n) throw new RangeError("Cannot divide by zero.");
  const [n, d] = denominator < 0n ? [-numerator, -denominator] : [numerator, denominator];
  const quotient = n / d;
  return n < 0n && quotient * d !== n ? quotient - 1n : quotient;
}

/**
 * The quotient rounded to the nearest integer, halves towards plus infinity: 2.5 → 3, −2.5 → −2.
 *
 * @source fn:round of XPath and XQuery Functions and Operators 3.1, which electronic invoicing rules use.
 */
export function roundedQuotient(numerator: bigint, denominator: bigint): bigint {
  return floorQuotient(2n * numerator + denominator, 2n * denominator);
}

/** The number nearest to an exact quotient (25 significant digits are carried before the last rounding). */
export function quotientToNumber(numerator: bigint, denominator: bigint): number {
  if (numerator === 0n) return 0;
  const excess = numerator.toString().length - denominator.toString().length;
  const shift = Math.max(0, 25 - excess);
  const digits = roundedQuotient(numerator * 10n ** BigInt(shift), denominator);
  return Number(`${digits}e-${shift}`);
}
