import type { CurrencyCode, MinorUnits, WrittenDecimal } from "@buildproof/units";

export const jurisdictions = ["AU", "AE", "SA"] as const;
export type Jurisdiction = (typeof jurisdictions)[number];

/** S standard rate, Z zero rated (GST-free), E exempt (input taxed), O outside scope. */
export const taxCategories = ["S", "Z", "E", "O"] as const;
export type TaxCategory = (typeof taxCategories)[number];

export const taxRoundings = ["line", "total"] as const;
export type TaxRounding = (typeof taxRoundings)[number];

export type QuoteLine = {
  /** At most six decimals. */
  readonly quantity: WrittenDecimal;
  readonly unitPriceMinor: MinorUnits;
  readonly discountPct?: WrittenDecimal | undefined;
  readonly taxCategory: TaxCategory;
};

export type QuoteLines = {
  readonly currency: CurrencyCode;
  readonly jurisdiction: Jurisdiction;
  readonly pricesIncludeTax: boolean;
  readonly lines: readonly QuoteLine[];
  /** Off the whole quote, on the same basis as the prices; default 0. */
  readonly discountMinor?: MinorUnits | undefined;
  /** Default AU total, AE line, SA total. */
  readonly rounding?: TaxRounding | undefined;
};

export type TotalledLine = {
  readonly netMinor: MinorUnits;
  readonly taxMinor: MinorUnits;
  readonly grossMinor: MinorUnits;
};

export type TaxSubtotal = TotalledLine & { readonly taxCategory: TaxCategory; readonly ratePct: number };

export type QuoteTotals = TotalledLine & {
  readonly currency: CurrencyCode;
  readonly rounding: TaxRounding;
  readonly lines: readonly TotalledLine[];
  /** One entry per category that occurs, in the order S, Z, E, O. */
  readonly taxes: readonly TaxSubtotal[];
};
