/** A number as it is shown everywhere: grouped thousands, fixed decimals, a true minus sign. */
export function figureText(value: number, decimals = 0, signed = false): string {
  return new Intl.NumberFormat("en-AU", {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    signDisplay: signed ? "exceptZero" : "negative",
  })
    .format(value)
    .replace("-", "\u2212");
}
