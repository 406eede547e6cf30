import type { Transaction } from "@buildproof/database";
import { quoteTotals } from "@buildproof/pricing";
import { minorUnits } from "@buildproof/units";
import { z } from "zod";
import { atField } from "../core/at-field";
import { asJson } from "../core/audit";
import { newId } from "../core/new-id";
import { nextNumber } from "../core/next-number";
import { ok } from "../core/result";
import { dateInZone, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { lockQuote } from "../quotes/lock-quote";
import { receivedOn } from "../quotes/quote-money";
import { type QuoteSite, quoteSite } from "../quotes/quote-site";
import type { InvoiceContent, InvoiceLine } from "./invoice-content";
import { refuseInvoice } from "./refuse-invoice";
import { standingInvoice } from "./standing-invoice";
import { taxesOfLines } from "./taxes-of-lines";

/** From this much, tax included, an Australian tax invoice names its recipient (GST Act 1999 s 29-70(1)(c)). */
const NAMED_FROM_MINOR = 100_000n;

/** Writes the tax invoice of the accepted version: numbered, dated, and never changed afterwards. */
export const issueInvoice = command({
  name: "invoices.issue",
  permission: "invoices:issue",
  input: z.strictObject({
    quoteId: z.uuid("Open the quote again and issue the invoice from there."),
    dueOn: z.iso.date("Choose the day it is due."),
    buyerReference: z.string().trim().max(80, "Keep the order number under 80 characters."),
  }),
  async run({ tx, workshopId, person, now, audit }, { quoteId, dueOn, buyerReference }) {
    const quote = await tx.quote.findUnique({ where: { id: quoteId } });
    if (!quote) return refuseInvoice("quote-not-found");
    await lockQuote(tx, quoteId);
    const site = await quoteSite(tx);
    const today = dateInZone(now, site.timeZone);
    if (dueOn < today) return atField("dueOn", refuseInvoice("due-past"));
    const version = await acceptedVersion(tx, quoteId);
    if (!version) return refuseInvoice("nothing-accepted");
    if (version.grossMinor <= 0n) return refuseInvoice("nothing-to-invoice");
    const standing = await standingInvoice(tx, quoteId);
    if (standing) return refuseInvoice("invoice-stands", { number: standing.number });
    const content = contentOf(version, site, buyerReference);
    if (content.buyer.name.trim() === "" && version.grossMinor >= NAMED_FROM_MINOR)
      return refuseInvoice("buyer-unnamed");
    const id = newId();
    const number = await nextNumber(tx, workshopId, "invoice");
    await tx.invoice.create({
      data: {
        id,
        workshopId,
        number,
        kind: "invoice",
        quoteId,
        versionId: version.id,
        issuedOn: storedDate(today),
        dueOn: storedDate(dueOn),
        currency: site.currency,
        netMinor: version.netMinor,
        taxMinor: version.taxMinor,
        grossMinor: version.grossMinor,
        prepaidMinor: await receivedOn(tx, quoteId),
        content: asJson(content),
        issuedById: person.id,
        issuedAt: now,
      },
    });
    audit({ entity: "invoice", entityId: id, after: { number, quoteId, grossMinor: version.grossMinor } });
    return ok({ invoiceId: id, number });
  },
});

function acceptedVersion(tx: Transaction, quoteId: string) {
  return tx.quoteVersion.findFirst({
    where: { quoteId, status: "accepted" },
    include: {
      lines: { orderBy: { position: "asc" } },
      quote: { include: { customer: true, vehicle: { include: { vehicleModel: true } } } },
    },
  });
}

type Accepted = NonNullable<Awaited<ReturnType<typeof acceptedVersion>>>;

function contentOf(version: Accepted, site: QuoteSite, buyerReference: string): InvoiceContent {
  const { customer, vehicle, number } = version.quote;
  const lines = version.lines.map((row) => lineOf(row, site));
  const { name, taxNumber, address, phone, email } = customer;
  return {
    jurisdiction: site.jurisdiction,
    currency: site.currency,
    taxName: site.taxName,
    timeZone: site.timeZone,
    seller: {
      name: site.name,
      taxNumber: site.taxNumber.replaceAll(/\s/g, ""),
      address: site.address,
      phone: site.phone,
      email: site.email,
    },
    buyer: { name, taxNumber, address, phone, email },
    buyerReference,
    vehicle: {
      description: vehicle.vehicleModel.name,
      plate: vehicle.plate,
      vin: vehicle.vin,
      odometerKm: vehicle.odometerKm,
    },
    quoteNumber: number,
    versionNo: version.versionNo,
    lines,
    taxes: taxesOfLines(lines),
    credits: null,
  };
}

function lineOf(row: Accepted["lines"][number], { currency, jurisdiction }: QuoteSite): InvoiceLine {
  // The rate is asked of the one place that knows it; the amounts are those that were accepted.
  const [tax] = quoteTotals({
    currency,
    jurisdiction,
    pricesIncludeTax: false,
    lines: [{ quantity: 1, unitPriceMinor: minorUnits(0), taxCategory: row.taxCategory }],
  }).taxes;
  return {
    position: row.position,
    code: row.code,
    description: row.description,
    quantity: row.quantity.toString(),
    unit: row.unit,
    unitPriceMinor: Number(row.unitPriceMinor),
    discountPct: row.discountPct.toString(),
    taxCategory: row.taxCategory,
    ratePct: tax?.ratePct ?? 0,
    netMinor: Number(row.netMinor),
    taxMinor: Number(row.taxMinor),
    grossMinor: Number(row.grossMinor),
  };
}
