import type { CurrencyCode } from "@buildproof/units";
import type { LetterHead } from "./letter-head";
import type { DocumentCustomer, DocumentVehicle } from "./vehicle-lines";

/** One line of an invoice; amounts in minor units. */
export interface InvoiceDocumentLine {
  readonly description: string;
  readonly detail?: string;
  /** As written: "1", "37.1 h". */
  readonly quantity: string;
  readonly netMinor: number;
  /** As written: "10 %", "free". */
  readonly tax: string;
  readonly grossMinor: number;
}

/** Everything a tax invoice or a credit note says. Dates are `YYYY-MM-DD` in the workshop's zone. */
export interface InvoiceDocument {
  readonly kind: "invoice" | "credit-note";
  readonly number: string;
  readonly workshop: LetterHead;
  readonly customer: DocumentCustomer & { readonly taxNumber?: string };
  readonly vehicle: DocumentVehicle;
  readonly issuedOn: string;
  /** The instant of issue (ISO 8601 with offset or Z); it dates the file itself. */
  readonly issuedAt: string;
  readonly dueOn: string;
  readonly currency: CurrencyCode;
  /** As in "incl. GST". */
  readonly taxName: string;
  /** What the customer calls it; empty: nothing. */
  readonly buyerReference: string;
  /** The quote and version that was accepted, in words. */
  readonly basis: string;
  /** Of a credit note: which invoice, and why. */
  readonly credits?: { readonly number: string; readonly issuedOn: string; readonly reason: string };
  readonly lines: readonly InvoiceDocumentLine[];
  readonly netMinor: number;
  /** Tax by rate, as "GST 10 % on $1,000.00". */
  readonly taxes: readonly { readonly words: string; readonly taxMinor: number }[];
  readonly grossMinor: number;
  /** Received before it was issued. */
  readonly prepaidMinor: number;
  /** How to pay, a sentence each. */
  readonly payment: readonly string[];
}
