import { jurisdictions, taxCategories } from "@buildproof/pricing";
import { isCurrencyCode } from "@buildproof/units";
import { z } from "zod";

const party = z.strictObject({
  name: z.string(),
  /** Digits; empty: none known. */
  taxNumber: z.string(),
  address: z.string(),
  phone: z.string(),
  email: z.string(),
});

const minor = z.number().int();

const line = z.strictObject({
  /** Its position on the accepted version; a credit by amount has lines of its own. */
  position: z.number().int(),
  code: z.string(),
  description: z.string(),
  quantity: z.string(),
  unit: z.string(),
  unitPriceMinor: minor,
  discountPct: z.string(),
  taxCategory: z.enum(taxCategories),
  ratePct: z.number(),
  netMinor: minor,
  taxMinor: minor,
  grossMinor: minor,
});

/** What an invoice or credit note says, as it is kept for good: the JSON of `content`. */
export const invoiceContent = z.strictObject({
  jurisdiction: z.enum(jurisdictions),
  currency: z.string().refine(isCurrencyCode),
  taxName: z.string(),
  timeZone: z.string(),
  seller: party,
  buyer: party,
  buyerReference: z.string(),
  vehicle: z.strictObject({
    description: z.string(),
    plate: z.string(),
    vin: z.string(),
    odometerKm: z.number(),
  }),
  quoteNumber: z.number().int(),
  versionNo: z.number().int(),
  lines: z.array(line),
  taxes: z.array(
    z.strictObject({
      taxCategory: z.enum(taxCategories),
      ratePct: z.number(),
      netMinor: minor,
      taxMinor: minor,
    }),
  ),
  /** Of a credit note: the invoice that it takes back. */
  credits: z.strictObject({ number: z.number().int(), issuedOn: z.string() }).nullable(),
});

export type InvoiceContent = z.output<typeof invoiceContent>;
export type InvoiceLine = InvoiceContent["lines"][number];
