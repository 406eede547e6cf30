const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const notMeasured = /^[+-]?(?:nan|inf|infinity|∞|#n\/?a|#num!|#div\/0!)$/i;

/** As many digits as a whole number below 2^53 surely holds; the powers of ten up to here are exact too. */
const MOST_DIGITS = 15;
const POWERS_OF_TEN = Array.from({ length: MOST_DIGITS + 1 }, (_, power) => 10 ** power);
const [ZERO, NINE, MINUS, POINT] = [48, 57, 45, 46];

/** A number as an instrument writes it, or why it is none. `decimalComma` where fields are not split at commas. */
export function readDecimal(text: string, decimalComma: boolean): number | "text" | "not-finite" {
  const plainly = plainDecimal(text);
  if (!Number.isNaN(plainly)) return plainly;
  const trimmed = text.trim();
  const plain = decimalComma ? trimmed.replace(",", ".") : trimmed;
  if (!decimal.test(plain)) return notMeasured.test(trimmed) ? "not-finite" : "text";
  const value = Number(plain);
  return Number.isFinite(value) ? value : "not-finite";
}

/**
 * Nearly every field of a log is a few digits with a point among them, and a log has millions: those are read here,
 * everything else is NaN and goes the long way. One whole number divided by one exact power of ten is rounded once, so
 * the answer is the same.
 */
function plainDecimal(text: string): number {
  const length = text.length;
  const start = text.charCodeAt(0) === MINUS ? 1 : 0;
  let point = -1;
  let digits = 0;
  let whole = 0;
  for (let at = start; at < length; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= ZERO && code <= NINE) {
      whole = whole * 10 + (code - ZERO);
      digits += 1;
    } else if (code === POINT && point === -1) point = at;
    else return Number.NaN;
  }
  if (digits === 0 || digits > MOST_DIGITS) return Number.NaN;
  const value = point === -1 ? whole : whole / (POWERS_OF_TEN[length - 1 - point] ?? Number.NaN);
  return start === 1 ? -value : value;
}
