import { expect, test } from "vitest";
import type { InvoiceDocument } from "./invoice-document";
import { invoicePdf } from "./invoice-pdf";
import { readPdf } from "./read-pdf";
import { sampleQuote } from "./sample-quote";

const invoice: InvoiceDocument = {
  kind: "invoice",
  number: "1007",
  workshop: sampleQuote.workshop,
  customer: { ...sampleQuote.customer, taxNumber: "ABN 51 824 753 556" },
  vehicle: sampleQuote.vehicle,
  issuedOn: "2025-12-18",
  issuedAt: "2025-12-18T15:00:00+10:30",
  dueOn: "2026-01-01",
  currency: "AUD",
  taxName: "GST",
  buyerReference: "PO 7731",
  basis: "For the work of quote 1042, version 2, as you accepted it.",
  lines: [
    { description: "Charge cooler kit", quantity: "1", netMinor: 265_000, tax: "10 %", grossMinor: 291_500 },
    {
      description: "Workshop labour",
      detail: "less 5 %",
      quantity: "3.5 h",
      netMinor: 60_000,
      tax: "10 %",
      grossMinor: 66_000,
    },
  ],
  netMinor: 325_000,
  taxes: [{ words: "GST 10 % on $3,250.00", taxMinor: 32_500 }],
  grossMinor: 357_500,
  prepaidMinor: 100_000,
  payment: ["By transfer; name invoice 1007."],
};

const textOf = async (document: InvoiceDocument) => {
  const { pages, tagged } = await readPdf(await invoicePdf(document));
  expect(tagged).toBe(true);
  return pages.join(" ").replace(/\s+/g, " ");
};

test("a tax invoice says all that the law asks of it", async () => {
  const text = await textOf(invoice);
  // GST Act 1999 (Cth) s 29-70(1): intended as a tax invoice, supplier and ABN, date, what, quantity, price, tax, recipient.
  for (const said of [
    "Tax invoice 1007",
    "Saltbush Dyno & Driveline",
    "ABN 47 555 222 000",
    "18 December 2025",
    "Łucja Okafor-Nguyễn",
    "ABN 51 824 753 556",
    "PO 7731",
    "VIN 7ZZKR57W1R0000421",
    "Charge cooler kit",
    "3.5 h",
    "less 5 %",
    "$2,650.00",
    "10 %",
    "GST 10 % on $3,250.00",
    "$325.00",
    "$3,575.00",
    "Received",
    "$1,000.00",
    "$2,575.00",
    "1 January 2026",
  ])
    expect(text).toContain(said);
});

test("a credit note names its invoice and its reason, and asks for nothing", async () => {
  const text = await textOf({
    ...invoice,
    kind: "credit-note",
    number: "1008",
    credits: { number: "1007", issuedOn: "2025-12-18", reason: "The cooler was not needed." },
    payment: [],
  });
  expect(text).toContain("Credit note 1008");
  expect(text).toContain("takes back from tax invoice 1007 of 18 December 2025. The cooler was not needed.");
  expect(text).not.toContain("To pay");
  expect(text).not.toContain("1 January 2026");
});

test("the same invoice is the same bytes", async () => {
  const [one, other] = await Promise.all([invoicePdf(invoice), invoicePdf(invoice)]);
  expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
});
