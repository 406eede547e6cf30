import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { perform } from "../core/perform";
import { jobGate } from "../jobs/gate";
import { readJob } from "../jobs/read-job";
import { settleIfDone } from "../paperwork/settle-job";
import { acceptedJob, pay } from "../testing/accepted-job";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { newIssued } from "../testing/quote-story";
import { recordRefund } from "./record-refund";
import { showQuote } from "./show-quote";

const trial = demoWorkshop();

const refund = (quoteId: string, amount: string, more: object = {}) => ({
  quoteId,
  amount,
  method: "transfer",
  reference: "R",
  paidOn: "2026-11-25",
  reason: "The vehicle failed its inspection.",
  ...more,
});

describe("a refund", () => {
  test("stands beside what came in, and what is held and the gate follow", async () => {
    const { quoteId, jobId } = await acceptedJob(trial);
    const done = await trial.done("owner", recordRefund, refund(quoteId, "1,000.50"));
    expect(done).toMatchObject({ amountMinor: "100050", heldMinor: "1499950", depositMet: false });

    const { payments, money, heldMinor } = await trial.done("owner", showQuote, { quoteId });
    expect(payments.map(({ kind, amountMinor, reason }) => [kind, amountMinor, reason])).toEqual([
      ["deposit", 1_600_000, ""],
      ["refund", 100_050, "The vehicle failed its inspection."],
    ]);
    expect(heldMinor).toBe(1_499_950);
    expect(money).toMatchObject({ receivedMinor: 1_499_950, depositMet: false, remainsMinor: 2_020_050 });

    const job = await trial.done("owner", readJob, { jobId });
    expect(job.money).toMatchObject({ receivedMinor: 1_499_950n, depositMet: false });
    expect(job.timeline.map(({ sentence }) => sentence)).toContain(
      "Refunded: $1,000.50. The vehicle failed its inspection.",
    );
    const gate = await trial.done("manager", jobGate, { jobId });
    expect(gate.points.find(({ point }) => point === "deposit")).toMatchObject({ met: false });
  });

  test("is in the audit record with what was held before", async () => {
    const { quoteId } = await acceptedJob(trial);
    const { paymentId } = await trial.done("owner", recordRefund, refund(quoteId, "16000"));
    const [event] = await trial.sql("select before, after from audit_event where entity_id = $1", [
      paymentId,
    ]);
    expect(event?.before).toEqual({ heldMinor: "1600000" });
    expect(event?.after).toMatchObject({ kind: "refund", amountMinor: "1600000" });
  });

  test("makes a job that was ready owe its balance again", async () => {
    const { quoteId, jobId, workshopId } = await acceptedJob(trial, { items: ["dark-trim"] });
    await trial.database.inWorkshop(workshopId, (tx) => pay(tx, workshopId, quoteId, "balance", 1_920_000n));
    await trial.sql("delete from obligation where job_id = $1", [jobId]);
    await trial.sql("delete from job_step where job_id = $1", [jobId]);
    await trial.sql("update job set status = 'done_unpaid' where id = $1", [jobId]);
    await trial.database.inWorkshop(workshopId, (tx) =>
      settleIfDone({ tx, now: demoNow, audit: () => {} }, jobId),
    );
    const status = async () => (await trial.done("owner", readJob, { jobId })).status;
    const before = await status();
    await trial.done("owner", recordRefund, refund(quoteId, "100"));
    expect([before, await status()]).toEqual(["ready", "doneUnpaid"]);
  });

  test("sent twice by a device is recorded once", async () => {
    const { quoteId } = await acceptedJob(trial);
    const key = newId();
    const send = async () => perform(await trial.as("owner"), recordRefund, refund(quoteId, "500"), { key });
    const [one, two] = await Promise.all([send(), send()]);
    expect(two).toEqual(one);
    const rows = await trial.sql("select id from payment where quote_id = $1 and kind = 'refund'", [quoteId]);
    expect(rows).toHaveLength(1);
  });

  test("of more than is here is refused, and two at once do not slip past that", async () => {
    const { quoteId } = await acceptedJob(trial);
    const refusal = await trial.refused("owner", recordRefund, refund(quoteId, "16000.01"));
    expect(refusal).toMatchObject({ code: "more-than-received", field: "amount" });
    expect(refusal.sentence).toContain("Only $16,000.00");
    const send = async () => perform(await trial.as("owner"), recordRefund, refund(quoteId, "9000"));
    const results = await Promise.all([send(), send()]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
  });

  test("of more than is here is refused by the database itself, whoever writes it", async () => {
    const { quoteId, workshopId } = await acceptedJob(trial);
    const write = trial.database.inWorkshop(workshopId, (tx) =>
      pay(tx, workshopId, quoteId, "refund", 1_600_001n),
    );
    await expect(write).rejects.toThrow(/refund_within_received/);
  });

  test("of nothing, without a reason or in the future is refused at its field", async () => {
    const { quoteId } = await acceptedJob(trial);
    const tries = [
      [refund(quoteId, "0.00"), "amount-not-valid", "amount"],
      [refund(quoteId, "lots"), "amount-not-valid", "amount"],
      [refund(quoteId, "10", { reason: "because" }), "refund-reason", "reason"],
      [refund(quoteId, "10", { paidOn: "2026-11-26" }), "paid-back-in-future", "paidOn"],
    ] as const;
    for (const [input, code, field] of tries)
      expect(await trial.refused("owner", recordRefund, input)).toMatchObject({ code, field });
  });

  test("where nothing was paid is refused", async () => {
    const { quoteId } = await newIssued(trial, "dark-trim-pack");
    const { code } = await trial.refused("owner", recordRefund, refund(quoteId, "10"));
    expect(code).toBe("more-than-received");
  });

  test("is the owner's to give, on a quote of this workshop", async () => {
    const { quoteId } = await acceptedJob(trial);
    for (const part of ["desk", "manager", "technician"] as const)
      expect((await trial.refused(part, recordRefund, refund(quoteId, "10"))).code).toBe("not-allowed");
    expect((await trial.refused("gulfOwner", recordRefund, refund(quoteId, "10"))).code).toBe(
      "quote-not-found",
    );
  });
});
