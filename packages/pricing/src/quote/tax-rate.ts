import { type BasisPoints, basisPoints } from "@buildproof/units";
import type { Jurisdiction, TaxCategory, TaxRounding } from "./quote-lines";

const STANDARD_RATE: Readonly<Record<Jurisdiction, BasisPoints>> = {
  AU: basisPoints(1_000),
  AE: basisPoints(500),
  SA: basisPoints(1_500),
};

/**
 * @source A New Tax System (Goods and Services Tax) Act 1999 (Cth) s 9-70 (10 %); Federal Decree-Law
 *         No. 8 of 2017 (UAE) art. 3 (5 %, article from memory); KSA standard rate 15 % since 1 July 2020.
 */
export function taxRate(jurisdiction: Jurisdiction, category: TaxCategory): BasisPoints {
  return category === "S" ? STANDARD_RATE[jurisdiction] : basisPoints(0);
}

/**
 * @source GST Act 1999 (Cth) s 9-90 leaves the choice in Australia; UAE Public Clarification VATP006
 *         rounds each line; KSA from memory.
 */
export const usualRounding: Readonly<Record<Jurisdiction, TaxRounding>> = {
  AU: "total",
  AE: "line",
  SA: "total",
};
