import { compareDecimals, exactDecimal } from "@buildproof/units";

/** Strings are matched so that digits inside them are passed over. */
const STRING_OR_NUMBER = /"[^"\\]*(?:\\.[^"\\]*)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g;
/** No decimal of this many characters loses anything on the way through a double. */
const ALWAYS_HELD = 15;

/** JSON, where a number with more digits than a double holds arrives as text instead of changed. */
export function readJsonExactly(text: string): unknown {
  return JSON.parse(text.replace(STRING_OR_NUMBER, (token) => (isHeld(token) ? token : `"${token}"`)));
}

function isHeld(token: string): boolean {
  if (token.startsWith('"') || (token.length <= ALWAYS_HELD && !/[eE]/.test(token))) return true;
  const number = Number(token);
  if (!Number.isFinite(number)) return false;
  try {
    return compareDecimals(exactDecimal(token), exactDecimal(number)) === 0;
  } catch {
    return false; // an exponent beyond anything a double holds
  }
}
