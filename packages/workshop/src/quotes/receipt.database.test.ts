import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { issueInvoice } from "../invoices/issue-invoice";
import { marginsByPackage } from "../owner/margins-by-package";
import { demoWorkshop } from "../testing/demo-workshop";
import { newAccepted, newIssued, newLink } from "../testing/quote-story";
import { declineVersion } from "./decline-version";
import { receiptPdf } from "./receipt-pdf";
import { recordPayment } from "./record-payment";
import { recordRefund } from "./record-refund";
import { showQuote } from "./show-quote";

const trial = demoWorkshop();

const payment = (quoteId: string, more: object = {}) => ({
  quoteId,
  kind: "deposit",
  amount: "1,000",
  method: "transfer",
  reference: "Q",
  receivedOn: "2026-11-25",
  ...more,
});

const margins = () => trial.done("owner", marginsByPackage, { period: "12-months" });

describe("a receipt", () => {
  test("is numbered after its quote, and the same bytes every time", async () => {
    const { quoteId } = await newAccepted(trial);
    await trial.done("desk", recordPayment, payment(quoteId));
    const { paymentId } = await trial.done("desk", recordPayment, payment(quoteId, { heldAs: "part" }));
    const { number, payments } = await trial.done("desk", showQuote, { quoteId });
    expect(payments.map(({ heldAs }) => heldAs)).toEqual(["security", "part"]);
    const once = await trial.done("desk", receiptPdf, { paymentId });
    const again = await trial.done("owner", receiptPdf, { paymentId });
    expect(once.fileName).toBe(`receipt-${number}-2.pdf`);
    expect(Buffer.from(once.bytes).equals(Buffer.from(again.bytes))).toBe(true);
  });

  test("is for money that came in, and for those who read quotes", async () => {
    const { quoteId } = await newAccepted(trial);
    const { paymentId } = await trial.done("desk", recordPayment, payment(quoteId));
    const refund = await trial.done("owner", recordRefund, {
      quoteId,
      amount: "10",
      method: "transfer",
      reference: "",
      paidOn: "2026-11-25",
      reason: "The vehicle was sold.",
    });
    const refused = async (who: "desk" | "technician", id: string) =>
      (await trial.refused(who, receiptPdf, { paymentId: id })).code;
    expect(await refused("desk", refund.paymentId)).toBe("payment-not-found");
    expect(await refused("desk", newId())).toBe("payment-not-found");
    expect(await refused("technician", paymentId)).toBe("not-allowed");
  });
});

describe("what the owner sees", () => {
  test("deposits are held until their work is invoiced, and what went back is not", async () => {
    const { quoteId } = await newAccepted(trial);
    const before = (await margins()).held;
    await trial.done("desk", recordPayment, payment(quoteId));
    await trial.done("desk", recordPayment, payment(quoteId, { heldAs: "part", amount: "500" }));
    expect((await margins()).held).toEqual({
      quotes: before.quotes + 1,
      securityMinor: before.securityMinor + 100_000,
      partMinor: before.partMinor + 50_000,
    });
    await trial.done("desk", issueInvoice, { quoteId, dueOn: "2026-12-09", buyerReference: "" });
    expect((await margins()).held).toEqual(before);
  });

  test("a declined quote is among the lost ones in the customer's words", async () => {
    const { quoteId, versionId } = await newIssued(trial);
    const { customer } = await newLink(trial, versionId);
    await trial.done(customer, declineVersion, { versionId, reason: "We sold the boat." });
    const { lost } = await margins();
    expect(lost.find((quote) => quote.quoteId === quoteId)?.because).toBe("We sold the boat.");
  });
});
