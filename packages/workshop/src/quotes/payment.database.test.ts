import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { perform } from "../core/perform";
import { demoWorkshop } from "../testing/demo-workshop";
import { newAccepted, newIssued } from "../testing/quote-story";
import { moneyInForce } from "./quote-money";
import { recordPayment } from "./record-payment";

const trial = demoWorkshop();

const accepted = () => newAccepted(trial);

const payment = (quoteId: string, amount: string, more: object = {}) => ({
  quoteId,
  kind: "deposit",
  amount,
  method: "transfer",
  reference: "Q",
  receivedOn: "2026-11-25",
  ...more,
});
const dollars = (minor: number) => (minor / 100).toFixed(2);

describe("a payment", () => {
  test("is recorded to the cent as typed, and the deposit is met when it is all here", async () => {
    const { quoteId, depositMinor } = await accepted();
    const part = await trial.done("desk", recordPayment, payment(quoteId, "1,000.10"));
    expect(part).toMatchObject({ amountMinor: "100010", depositMet: false });
    const rest = await trial.done("desk", recordPayment, payment(quoteId, dollars(depositMinor - 100_010)));
    expect(rest).toMatchObject({ depositMet: true });
    const [row] = await trial.sql("select workshop_id from quote where id = $1", [quoteId]);
    const status = await trial.database.inWorkshop(String(row?.workshop_id), (tx) =>
      moneyInForce(tx, quoteId),
    );
    expect(status).toMatchObject({
      depositMinor: BigInt(depositMinor),
      receivedMinor: BigInt(depositMinor),
      depositMet: true,
    });
  });

  test("sent twice by a device is recorded once", async () => {
    const { quoteId } = await accepted();
    const key = newId();
    const send = async () => perform(await trial.as("desk"), recordPayment, payment(quoteId, "500"), { key });
    const [one, two] = await Promise.all([send(), send()]);
    expect(two).toEqual(one);
    expect(await trial.sql("select amount_minor from payment where quote_id = $1", [quoteId])).toHaveLength(
      1,
    );
  });

  test.each(["", "0", "0.00", "-100", "12.345", "lots", "1e5"])("of %s is refused", async (amount) => {
    const { quoteId } = await quoteOnce();
    const { code } = await trial.refused("desk", recordPayment, payment(quoteId, amount));
    expect(["amount-not-valid", "invalid-input"]).toContain(code);
  });

  test("of more than is due is refused, saying what remains; two at once do not slip past that", async () => {
    const { quoteId, remainsMinor } = await accepted();
    const refusal = await trial.refused("desk", recordPayment, payment(quoteId, dollars(remainsMinor + 1)));
    expect(refusal).toMatchObject({ code: "more-than-due" });
    const pay = async (as: "desk" | "owner") =>
      perform(
        await trial.as(as),
        recordPayment,
        payment(quoteId, dollars(remainsMinor), { kind: "balance" }),
      );
    const results = await Promise.all([pay("desk"), pay("owner")]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
  });

  test("received tomorrow is refused", async () => {
    const { quoteId } = await quoteOnce();
    const tomorrow = payment(quoteId, "100", { receivedOn: "2026-11-26" });
    expect(await trial.refused("desk", recordPayment, tomorrow)).toMatchObject({
      code: "received-in-future",
    });
  });

  test("on a quote that nobody accepted is refused", async () => {
    const { quoteId } = await newIssued(trial, "dark-trim-pack");
    expect(await trial.refused("desk", recordPayment, payment(quoteId, "100"))).toMatchObject({
      code: "nothing-accepted",
    });
  });

  test("by a technician, or on another workshop's quote, is refused", async () => {
    const { quoteId } = await quoteOnce();
    const wanted = payment(quoteId, "100");
    expect(await trial.refused("technician", recordPayment, wanted)).toMatchObject({ code: "not-allowed" });
    expect(await trial.refused("gulfOwner", recordPayment, wanted)).toMatchObject({
      code: "quote-not-found",
    });
  });

  test("once recorded is never changed, not even by the application's own role", async () => {
    const { quoteId } = await accepted();
    await trial.done("desk", recordPayment, payment(quoteId, "100"));
    const [row] = await trial.sql("select workshop_id from quote where id = $1", [quoteId]);
    const change = trial.database.inWorkshop(
      String(row?.workshop_id),
      (tx) => tx.$executeRaw`update payment set amount_minor = 1 where quote_id = ${quoteId}::uuid`,
    );
    await expect(change).rejects.toThrow(/permission denied|append_only/);
  });
});

let once: Promise<{ readonly quoteId: string }> | undefined;
/** One accepted quote for all the refusals: none of them changes it. */
function quoteOnce() {
  once ??= accepted();
  return once;
}
