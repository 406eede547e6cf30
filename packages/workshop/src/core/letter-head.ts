import type { LetterHead } from "@buildproof/documents";
import { jurisdictions } from "@buildproof/pricing";
import { taxRegistration } from "./tax-registration";

type Sender = Omit<LetterHead, "address"> & { readonly address: string; readonly jurisdiction: string };

/** The workshop as it stands at the head of what it sends. */
export function letterHead({ name, taxNumber, address, phone, email, jurisdiction }: Sender): LetterHead {
  const law = jurisdictions.find((known) => known === jurisdiction.slice(0, 2));
  return {
    name,
    taxNumber: law ? taxRegistration(law, taxNumber) : taxNumber,
    address: addressLines(address),
    phone,
    email,
  };
}

/** An address as on an envelope. */
export function addressLines(address: string): readonly string[] {
  return address.split(/\s*[\n,]\s*/).filter((line) => line !== "");
}
