import { type CurrencyCode, currencyDecimals } from "./currency";
import type { MinorUnits } from "./minor-units";

/** The amount as a plain decimal in the currency's main unit, for documents and files: "12.345". */
export function decimalAmount(amount: MinorUnits, currency: CurrencyCode): string {
  const decimals = currencyDecimals(currency);
  const digits = String(Math.abs(amount)).padStart(decimals + 1, "0");
  const cut = digits.length - decimals;
  const sign = amount < 0 ? "-" : "";
  return sign + digits.slice(0, cut) + (decimals === 0 ? "" : `.${digits.slice(cut)}`);
}

/** The amount as people read it: formatMoney(194000, "AUD") is "$1,940.00" in Australia. */
export function formatMoney(amount: MinorUnits, currency: CurrencyCode, locale = "en-AU"): string {
  const decimals = currencyDecimals(currency);
  const format = new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
  // As text, so that sixteen-digit amounts are not rounded on the way through a binary fraction.
  return format.format(decimalAmount(amount, currency) as Intl.StringNumericLiteral);
}
