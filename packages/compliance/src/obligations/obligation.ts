/** What a vehicle and its build are, as far as an obligation may turn on it. */
export const buildTraits = [
  "forced-induction",
  "calibration-changed",
  "exhaust-changed",
  "ride-height-or-tyres-changed",
  "camera-recalibration",
  "tyre-placard",
  "trailer-brakes",
  "certificate-promised",
  "power-promised",
  "re-torque-promised",
  "warranted-parts",
  "torque-steps",
  "hold-points",
] as const;
export type BuildTrait = (typeof buildTraits)[number];

/** How an obligation is met: by a file that somebody attaches, or by what the job's own record already says. */
export type EvidenceKind = "certificate" | "declaration" | "label" | "report" | "record" | "invoice";

/**
 * Why it binds. What is promised in the accepted quote, and what keeps people from harm, holds the vehicle
 * back. Law that is known only from secondary pages or from memory is said aloud and never holds it back.
 */
export type ObligationBasis = "contract" | "safety" | "law-to-confirm" | "good-practice";

export type ObligationRule = {
  readonly code: string;
  readonly title: string;
  /** Country of the site, as an ISO 3166-1 alpha-2 code; absent: everywhere. */
  readonly country?: string;
  /** Any one of these brings it about; empty: every job. */
  readonly when: readonly BuildTrait[];
  readonly basis: ObligationBasis;
  readonly because: string;
  readonly source: string;
  readonly evidenceKind: EvidenceKind;
  /** Who signs, in words; empty when nobody outside does. */
  readonly signatory?: string;
};

export type Obligation = Omit<ObligationRule, "when" | "country"> & {
  readonly signatory: string;
  readonly safety: boolean;
  readonly blocksHandOver: boolean;
};
