import { abn } from "@buildproof/compliance";
import type { Jurisdiction } from "@buildproof/pricing";

/** A number for tax with the name that its law gives it: "ABN 47 555 222 000". Empty stays empty. */
export function taxRegistration(jurisdiction: Jurisdiction, taxNumber: string): string {
  if (taxNumber === "") return "";
  if (jurisdiction === "AU") return `ABN ${abn(taxNumber).display ?? taxNumber}`;
  return `${jurisdiction === "AE" ? "TRN" : "VAT no."} ${taxNumber}`;
}
