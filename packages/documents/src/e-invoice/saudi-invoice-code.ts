/** What the code on an invoice says; the figures as decimal text in riyals. */
export type SaudiInvoice = {
  readonly seller: string;
  readonly vatNumber: string;
  /** When it was issued: ISO 8601 in UTC, whole seconds. */
  readonly issuedAt: string;
  readonly total: string;
  readonly vat: string;
};

/**
 * The text of the two-dimensional code on a tax invoice: five values, each behind its number and its length in
 * bytes of UTF-8, all of it in Base64.
 *
 * @source KSA tax authority, phase one of electronic invoicing: tags 1 to 5.
 * @throws {RangeError} a value of more than 255 bytes, which the length has no room for
 */
export function saudiInvoiceCode({ seller, vatNumber, issuedAt, total, vat }: SaudiInvoice): string {
  const values = [seller, vatNumber, issuedAt, total, vat].map((value, at) => {
    const bytes = Buffer.from(value, "utf8");
    if (bytes.length > 255)
      throw new RangeError(`“${value.slice(0, 20)}…” is too long for the code on the invoice: shorten it.`);
    return Buffer.concat([Buffer.from([at + 1, bytes.length]), bytes]);
  });
  return Buffer.concat(values).toString("base64");
}
