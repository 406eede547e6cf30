/**
 * Decimal places of each currency's minor unit.
 *
 * @source ISO 4217. Checked against published lists for AUD, NZD, AED, BHD, USD and JPY; the rest are
 *         from memory.
 */
const DECIMALS = {
  AED: 2,
  AUD: 2,
  BHD: 3,
  CAD: 2,
  CHF: 2,
  CLP: 0,
  CNY: 2,
  EUR: 2,
  FJD: 2,
  GBP: 2,
  HKD: 2,
  IDR: 2,
  INR: 2,
  ISK: 0,
  JOD: 3,
  JPY: 0,
  KRW: 0,
  KWD: 3,
  MYR: 2,
  NOK: 2,
  NZD: 2,
  OMR: 3,
  PGK: 2,
  PHP: 2,
  QAR: 2,
  SAR: 2,
  SEK: 2,
  SGD: 2,
  THB: 2,
  TND: 3,
  USD: 2,
  VND: 0,
  VUV: 0,
  XPF: 0,
  ZAR: 2,
} as const;

export type CurrencyCode = keyof typeof DECIMALS;

export const currencyCodes = Object.keys(DECIMALS) as CurrencyCode[]; // the keys of a constant

export function isCurrencyCode(code: string): code is CurrencyCode {
  return Object.hasOwn(DECIMALS, code);
}

/** 2 for cents, 3 for Gulf dinars' fils, 0 for yen. */
export function currencyDecimals(currency: CurrencyCode): number {
  return DECIMALS[currency];
}
