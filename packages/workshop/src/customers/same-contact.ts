import type { Transaction } from "@buildproof/database";

export type SameContact = {
  readonly id: string;
  readonly name: string;
  readonly phone: string;
  readonly email: string;
};

/** Customers with the same telephone number (by its digits, the country code aside) or e-mail address. */
export async function sameContact(
  tx: Transaction,
  contact: { readonly phone: string; readonly email: string },
  exceptId: string | null = null,
): Promise<readonly SameContact[]> {
  const digits = significantDigits(contact.phone);
  const email = contact.email.toLowerCase();
  if (digits.length < 6 && email === "") return [];
  return tx.$queryRaw<SameContact[]>`
    select id, name, phone, email from customer
    where (${exceptId}::uuid is null or id <> ${exceptId}::uuid)
      and ((${email} <> '' and lower(email) = ${email})
        or (length(${digits}) >= 6 and right(regexp_replace(phone, '\\D', '', 'g'), ${SIGNIFICANT}) = ${digits}))
    order by name limit 5`;
}

const SIGNIFICANT = 8;

function significantDigits(phone: string): string {
  return phone.replace(/\D/g, "").slice(-SIGNIFICANT);
}
