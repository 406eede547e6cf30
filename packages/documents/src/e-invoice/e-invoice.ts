import type { CurrencyCode, MinorUnits, WrittenDecimal } from "@buildproof/units";

/** The kinds of document of the trade's standard, with their codes of UNCL 1001. */
export const eInvoiceKinds = { invoice: "380", prepayment: "386", "credit-note": "381" } as const;
export type EInvoiceKind = keyof typeof eInvoiceKinds;

/** A tax invoice or credit note as it goes from program to program, every amount without tax unless it says so. */
export type EInvoice = {
  readonly kind: EInvoiceKind;
  readonly number: string;
  /** ISO dates by the site's calendar. */
  readonly issuedOn: string;
  readonly dueOn: string;
  readonly currency: CurrencyCode;
  /** The buyer's own name for what was ordered: an order number, or who ordered. */
  readonly buyerReference: string;
  /** Empty: none. */
  readonly note: string;
  /** Of a credit note: the invoice that it takes back. */
  readonly credits: { readonly number: string; readonly issuedOn: string } | null;
  readonly seller: EInvoiceParty;
  readonly buyer: EInvoiceParty;
  readonly lines: readonly EInvoiceLine[];
  /** One per category that occurs; they, not the lines, say what the tax is. */
  readonly taxes: readonly EInvoiceTax[];
  /** Received before, tax included. */
  readonly prepaidMinor: MinorUnits;
  readonly paymentTerms: string;
  readonly account: { readonly branch: string; readonly number: string; readonly name: string } | null;
};

export type EInvoiceParty = {
  readonly name: string;
  /** Eleven digits. */
  readonly abn: string;
  readonly street: string;
  readonly city: string;
  readonly postcode: string;
  /** State or territory; empty: none. */
  readonly region: string;
  /** ISO 3166-1, two letters. */
  readonly country: string;
  readonly email: string;
};

/** S standard rate, Z zero rated, E input taxed, O outside the tax. */
export type EInvoiceTaxCategory = "S" | "Z" | "E" | "O";

export type EInvoiceLine = {
  readonly name: string;
  /** The workshop's own code; empty: none. */
  readonly itemCode: string;
  readonly quantity: WrittenDecimal;
  /** UN/ECE Recommendation 20. */
  readonly unit: "C62" | "HUR" | "LTR" | "MTR" | "SET" | "LS";
  /** Decimal in the currency's main unit; it may have more decimals than the currency. */
  readonly unitPrice: WrittenDecimal;
  /** Of the line, after its part of every discount. */
  readonly netMinor: MinorUnits;
  readonly taxCategory: EInvoiceTaxCategory;
  readonly ratePct: number;
};

export type EInvoiceTax = {
  readonly taxCategory: EInvoiceTaxCategory;
  readonly ratePct: number;
  readonly netMinor: MinorUnits;
  readonly taxMinor: MinorUnits;
};
