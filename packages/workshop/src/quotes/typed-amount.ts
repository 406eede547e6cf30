import { type CurrencyCode, coefficientAt, currencyDecimals, exactDecimal } from "@buildproof/units";

/** Nothing that a workshop sells costs more than this, in main units; it keeps every sum far below 2^53. */
const MOST = 1_000_000;

/**
 * An amount as people type it ("3,500.00", "$ 145") in minor units, exactly. Null when it is not an amount of
 * this currency: letters, more decimals than the currency has, less than nothing, or far too much.
 */
export function typedAmount(typed: string, currency: CurrencyCode): bigint | null {
  const plain = typed
    .replace(/^\s*(A?\$|[A-Z]{3})?\s*/, "")
    .replace(/[\s,](?=\d{3}(\D|$))/g, "")
    .trim();
  if (!/^\d+(\.\d+)?$/.test(plain)) return null;
  const amount = exactDecimal(plain);
  const decimals = currencyDecimals(currency);
  if (amount.scale > decimals) return null;
  const minor = coefficientAt(amount, decimals);
  return minor <= BigInt(MOST) * 10n ** BigInt(decimals) ? minor : null;
}
