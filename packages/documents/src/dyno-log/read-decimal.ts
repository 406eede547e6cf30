const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const notMeasured = /^[+-]?(?:nan|inf|infinity|∞|#n\/?a|#num!|#div\/0!)$/i;

/** A number as an instrument writes it, or why it is none. `decimalComma` where fields are not split at commas. */
export function readDecimal(text: string, decimalComma: boolean): number | "text" | "not-finite" {
  const trimmed = text.trim();
  const plain = decimalComma ? trimmed.replace(",", ".") : trimmed;
  if (!decimal.test(plain)) return notMeasured.test(trimmed) ? "not-finite" : "text";
  const value = Number(plain);
  return Number.isFinite(value) ? value : "not-finite";
}
