import { decimalAmount, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { dateInZone, isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { readForecastRecord } from "../engineering/forecast-record";
import { linksOf } from "./links-of-version";
import { marginOfLines } from "./margin-of-lines";
import { messagesOf } from "./messages-of-quote";
import { openPoints } from "./open-points";
import { heldOf, moneyInForce } from "./quote-money";
import { refuse } from "./refuse-quote";
import { shownLines } from "./shown-lines";
import { versionContent } from "./version-content";
import { versionsOf } from "./versions-of-quote";

/** A quote as the desk works on it: one version in full, the others by name, links, payments; margin for those who may. */
export const showQuote = query({
  name: "quotes.show",
  permission: "quotes:read",
  input: z.strictObject({ quoteId: z.uuid(), versionNo: z.number().int().min(1).optional() }),
  async run({ tx, now, person }, { quoteId, versionNo }) {
    const quote = await tx.quote.findUnique({
      where: { id: quoteId },
      include: {
        build: { select: { id: true, number: true } },
        customer: { select: { id: true } },
        vehicle: { select: { id: true } },
        versions: { orderBy: { versionNo: "asc" } },
        payments: { orderBy: [{ receivedOn: "asc" }, { recordedAt: "asc" }] },
        jobs: { select: { id: true, number: true, status: true } },
      },
    });
    if (!quote) return refuse("quote-not-found");
    const wanted = versionNo ?? quote.versions.at(-1)?.versionNo;
    const shown = quote.versions.find((version) => version.versionNo === wanted);
    const content = shown ? await versionContent(tx, shown.id, now) : null;
    if (!shown || !content) return refuse("version-not-found");
    const { site } = content;
    const rows = await tx.quoteLine.findMany({
      where: { versionId: shown.id },
      orderBy: { position: "asc" },
    });
    const may = (permission: Parameters<typeof mayDo>[0]) => mayDo(permission, person.roles);
    const isDraft = shown.status === "draft";
    const lines = shownLines(rows);
    const open = isDraft
      ? await openPoints(
          tx,
          quote.build.id,
          { validUntil: content.validUntil, selection: shown.selection, rows: lines },
          site,
          now,
        )
      : null;
    const money = await moneyInForce(tx, quoteId);
    return ok({
      id: quote.id,
      number: quote.number,
      build: quote.build,
      customerId: quote.customer.id,
      vehicleId: quote.vehicle.id,
      job: quote.jobs[0] ?? null,
      today: dateInZone(now, site.timeZone),
      versions: await versionsOf(tx, quote.versions, now, site.timeZone),
      shown: {
        ...content,
        revision: shown.revision,
        /** What the desk keeps beside the promise; a customer is shown the promise. */
        forecast: readForecastRecord(shown.forecast),
        lines,
        open,
        /** The discount off the whole as it would be typed; empty for none. */
        discountTyped:
          shown.discountMinor === 0n ? "" : decimalAmount(minorUnits(shown.discountMinor), content.currency),
      },
      messages: await messagesOf(tx, quoteId),
      links: isDraft ? [] : await linksOf(tx, shown.id, now),
      payments: quote.payments.map((payment) => ({
        id: payment.id,
        kind: payment.kind,
        amountMinor: Number(payment.amountMinor),
        heldAs: payment.heldAs,
        method: payment.method,
        reference: payment.reference,
        reason: payment.reason,
        receivedOn: isoDateOf(payment.receivedOn),
      })),
      /** What is here of the customer's money, whichever version it came in on. */
      heldMinor: Number(heldOf(quote.payments)),
      money: money && {
        depositMinor: Number(money.depositMinor),
        receivedMinor: Number(money.receivedMinor),
        depositMet: money.depositMet,
        remainsMinor: Number(money.outstandingMinor),
        owedBackMinor: Number(money.owedBackMinor),
      },
      margin: may("quote-margin:read") ? marginOfLines(rows) : null,
      may: {
        write: may("quotes:write"),
        issue: may("quotes:issue"),
        anyDiscount: may("quotes:discount"),
        recordPayment: may("deposits:record"),
        refund: may("refunds:record"),
        issueInvoice: may("invoices:issue"),
        credit: may("invoices:credit"),
        seeCost: may("quote-margin:read"),
      },
    });
  },
});
