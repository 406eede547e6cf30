import { receiptPdf as drawReceipt } from "@buildproof/documents";
import { z } from "zod";
import { letterHead } from "../core/letter-head";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { en } from "../messages/en";
import { heldOf } from "./quote-money";
import { quoteSite } from "./quote-site";
import { refuse } from "./refuse-quote";

/** The receipt of one payment as a PDF: what it left to be paid of the version that was accepted then. */
export const receiptPdf = query({
  name: "quotes.receipt-pdf",
  permission: "quotes:read",
  input: z.strictObject({ paymentId: z.uuid() }),
  async run({ tx }, { paymentId }) {
    const payment = await tx.payment.findUnique({
      where: { id: paymentId },
      include: {
        quote: {
          include: {
            customer: true,
            vehicle: { include: { vehicleModel: true } },
            payments: { orderBy: [{ recordedAt: "asc" }, { id: "asc" }] },
            versions: { where: { acceptance: { isNot: null } }, orderBy: { versionNo: "asc" } },
          },
        },
      },
    });
    if (!payment || payment.kind === "refund") return refuse("payment-not-found");
    const { quote } = payment;
    const site = await quoteSite(tx);
    const at = quote.payments.findIndex(({ id }) => id === paymentId);
    const receivedMinor = heldOf(quote.payments.slice(0, at + 1));
    // The version that stood when the money came: a later one asks on later receipts.
    const version = quote.versions.findLast(
      ({ issuedAt }) => issuedAt !== null && issuedAt <= payment.recordedAt,
    );
    const remains = (version?.grossMinor ?? 0n) - receivedMinor;
    const number = `${quote.number}-${at + 1}`;
    const bytes = await drawReceipt({
      number,
      workshop: letterHead(site),
      customer: { name: quote.customer.name, email: quote.customer.email, phone: quote.customer.phone },
      vehicle: {
        description: quote.vehicle.vehicleModel.name,
        plate: quote.vehicle.plate,
        vin: quote.vehicle.vin,
      },
      receivedOn: isoDateOf(payment.receivedOn),
      recordedAt: payment.recordedAt.toISOString(),
      currency: site.currency,
      amountMinor: Number(payment.amountMinor),
      sentences: [
        en.receiptFor({ kind: payment.kind, quote: quote.number, version: version?.versionNo ?? null }),
        en.receiptBy({ method: payment.method, reference: payment.reference }),
        ...(payment.kind === "deposit" ? [en.receiptHeldAs({ as: payment.heldAs, tax: site.taxName })] : []),
      ],
      receivedMinor: Number(receivedMinor),
      remainsMinor: remains > 0n ? Number(remains) : 0,
    });
    return ok({ bytes, fileName: `receipt-${number}.pdf` });
  },
});
