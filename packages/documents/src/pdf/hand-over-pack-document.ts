import type { DynoFigures } from "./dyno-figures";
import type { LetterHead } from "./letter-head";
import type { DocumentCustomer, DocumentVehicle } from "./vehicle-lines";

export interface FittedPart {
  readonly name: string;
  /** Maker and part number. */
  readonly code: string;
  /** Serial or licence number, where the part carries one. */
  readonly serial?: string;
}

/** A tightened joint or a measurement, with the limits it was held to. */
export interface LoggedValue {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly by: string;
  /** As printed: date and time in the workshop's zone. */
  readonly at: string;
}

export interface AttachedCertificate {
  readonly name: string;
  readonly number: string;
  readonly signedBy: string;
  readonly on: string;
}

export interface FollowUp {
  readonly what: string;
  /** "at 500 to 1,000 km, booked for 12 January 2026". */
  readonly when: string;
}

/** What goes with the keys. Dates are `YYYY-MM-DD` in the workshop's zone; `madeAt` is an instant. */
export interface HandOverPackDocument {
  readonly workshop: LetterHead;
  readonly customer: DocumentCustomer;
  readonly vehicle: DocumentVehicle;
  readonly jobNumber: string;
  readonly quote: { readonly number: string; readonly version: number };
  readonly handedOverOn: string;
  readonly madeAt: string;
  readonly workDone: readonly string[];
  readonly parts: readonly FittedPart[];
  readonly torques: readonly LoggedValue[];
  readonly dyno?: DynoFigures;
  readonly certificates: readonly AttachedCertificate[];
  readonly cautions: readonly string[];
  readonly followUps: readonly FollowUp[];
}
