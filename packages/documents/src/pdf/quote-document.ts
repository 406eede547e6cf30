import type { CurrencyCode } from "@buildproof/units";
import type { LetterHead } from "./letter-head";
import type { PowerBandPlot } from "./power-band-plot";
import type { DocumentCustomer, DocumentVehicle } from "./vehicle-lines";

/** One line of a quote; `grossMinor` is the line's total with tax. */
export interface QuoteDocumentLine {
  readonly description: string;
  /** Smaller print under the description: what is in it, what it is for. */
  readonly detail?: string;
  /** As written: "1", "37.1 h", "5". */
  readonly quantity: string;
  readonly grossMinor: number;
}

export interface QuoteDocumentSection {
  readonly heading: string;
  readonly lines: readonly QuoteDocumentLine[];
}

/** A power promise is never shown without its band, its place and its reference condition. */
export interface QuoteDocumentPromise {
  readonly at: "hubs" | "wheels";
  readonly lowKw: number;
  readonly highKw: number;
  readonly referenceCondition: string;
  readonly remedy: string;
  readonly plot?: PowerBandPlot;
}

/** Everything a quote says. Money is integer minor units; dates are `YYYY-MM-DD` in the workshop's zone. */
export interface QuoteDocument {
  readonly workshop: LetterHead;
  readonly customer: DocumentCustomer;
  readonly vehicle: DocumentVehicle;
  readonly number: string;
  readonly version: number;
  readonly issuedOn: string;
  /** The instant of issue (ISO 8601 with offset or Z); it dates the file itself. */
  readonly issuedAt: string;
  readonly validUntil: string;
  readonly currency: CurrencyCode;
  /** As in "incl. GST". */
  readonly taxName: string;
  /** The customer's own goal, in the customer's words. */
  readonly asked: string;
  readonly proposed: string;
  readonly sections: readonly QuoteDocumentSection[];
  readonly discountMinor?: number;
  readonly netMinor: number;
  readonly taxMinor: number;
  readonly grossMinor: number;
  readonly deposit?: { readonly grossMinor: number; readonly covers: string };
  readonly promise?: QuoteDocumentPromise;
  readonly earliest?: string;
  readonly assumptions: readonly string[];
  readonly exclusions: readonly string[];
  readonly cautions: readonly string[];
  /** How to accept, a sentence each; the link, if any, is printed on its own line. */
  readonly acceptance: readonly string[];
  readonly acceptanceLink?: string;
  /** Printed across the head when this is not the version in force: "Superseded by version 2". */
  readonly notice?: string;
}
