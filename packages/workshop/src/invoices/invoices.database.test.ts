import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { recordPayment } from "../quotes/record-payment";
import { showQuote } from "../quotes/show-quote";
import { demoWorkshop } from "../testing/demo-workshop";
import { newAccepted, newIssued } from "../testing/quote-story";
import { creditInvoice } from "./credit-invoice";
import { invoicePdf } from "./invoice-pdf";
import { invoiceXml } from "./invoice-xml";
import { issueInvoice } from "./issue-invoice";
import { invoicesOfQuote } from "./list-invoices";

const trial = demoWorkshop();

const asked = (quoteId: string, more: object = {}) => ({
  quoteId,
  dueOn: "2026-12-09",
  buyerReference: "",
  ...more,
});
const credit = (invoiceId: string, more: object = {}) => ({
  invoiceId,
  positions: [],
  amount: "",
  reason: "The cooler was not needed after all.",
  ...more,
});

async function invoiced() {
  const quote = await newAccepted(trial);
  const { invoiceId, number } = await trial.done("desk", issueInvoice, asked(quote.quoteId));
  const { invoices } = await trial.done("desk", invoicesOfQuote, { quoteId: quote.quoteId });
  const [invoice] = invoices;
  if (!invoice) throw new Error("the invoice was just issued");
  return { ...quote, invoiceId, number, lines: invoice.lines, grossMinor: invoice.grossMinor };
}

describe("a tax invoice", () => {
  test("asks for what was accepted, says what is here already, and is the same bytes every time", async () => {
    const quote = await newAccepted(trial);
    const deposit = {
      quoteId: quote.quoteId,
      kind: "deposit",
      amount: "1500",
      method: "card",
      receivedOn: "2026-11-25",
    };
    await trial.done("desk", recordPayment, deposit);
    const { invoiceId } = await trial.done("desk", issueInvoice, asked(quote.quoteId));
    const [row] = await trial.sql("select gross_minor, prepaid_minor from invoice where id = $1", [
      invoiceId,
    ]);
    expect(Number(row?.gross_minor)).toBe(quote.remainsMinor);
    expect(Number(row?.prepaid_minor)).toBe(150_000);
    const once = await trial.done("desk", invoicePdf, { invoiceId });
    const again = await trial.done("owner", invoicePdf, { invoiceId });
    expect(Buffer.from(again.bytes).equals(Buffer.from(once.bytes))).toBe(true);
  });

  test("is numbered without a gap, also where one was refused in between", async () => {
    const first = await invoiced();
    await trial.refused("desk", issueInvoice, asked(first.quoteId));
    const second = await invoiced();
    expect(second.number).toBe(first.number + 1);
  });

  test("two desks at once get one invoice between them", async () => {
    const { quoteId } = await newAccepted(trial);
    const tries = await Promise.allSettled([
      trial.done("desk", issueInvoice, asked(quoteId)),
      trial.done("owner", issueInvoice, asked(quoteId)),
    ]);
    expect(tries.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
  });

  test("is refused with nothing accepted, a due day that has passed, and while another stands", async () => {
    const { quoteId } = await newIssued(trial);
    expect((await trial.refused("desk", issueInvoice, asked(quoteId))).code).toBe("nothing-accepted");
    const accepted = await newAccepted(trial);
    const past = await trial.refused("desk", issueInvoice, asked(accepted.quoteId, { dueOn: "2026-11-01" }));
    expect(past).toMatchObject({ code: "due-past", field: "dueOn" });
    await trial.done("desk", issueInvoice, asked(accepted.quoteId));
    expect((await trial.refused("desk", issueInvoice, asked(accepted.quoteId))).code).toBe("invoice-stands");
    expect((await trial.refused("desk", issueInvoice, asked(newId()))).code).toBe("quote-not-found");
    expect((await trial.refused("technician", issueInvoice, asked(accepted.quoteId))).code).toBe(
      "not-allowed",
    );
  });

  test("the database keeps it as it was and refuses a gap", async () => {
    const { invoiceId } = await invoiced();
    await expect(trial.sql("update invoice set gross_minor = 1 where id = $1", [invoiceId])).rejects.toThrow(
      /append_only/,
    );
    await expect(
      trial.sql(
        `insert into invoice (id, workshop_id, number, kind, quote_id, version_id, issued_on, due_on, currency, net_minor, tax_minor, gross_minor, content, issued_by_id, issued_at)
         select $1, workshop_id, number + 7, kind, quote_id, version_id, issued_on, due_on, currency, net_minor, tax_minor, gross_minor, content, issued_by_id, issued_at from invoice where id = $2`,
        [newId(), invoiceId],
      ),
    ).rejects.toThrow(/invoice_numbers_follow/);
  });

  test("goes as an electronic invoice to a customer with an ABN, and says what is missing to another", async () => {
    const private_ = await invoiced();
    const refusal = await trial.refused("desk", invoiceXml, { invoiceId: private_.invoiceId });
    expect(refusal.code).toBe("not-electronic");
    expect(refusal.sentence).toContain("needs an ABN");

    const fleet = await newAccepted(trial);
    await trial.sql(
      "update customer set tax_number = '51824753556' where id = (select customer_id from quote where id = $1)",
      [fleet.quoteId],
    );
    const { invoiceId } = await trial.done(
      "desk",
      issueInvoice,
      asked(fleet.quoteId, { buyerReference: "PO 7" }),
    );
    const { xml } = await trial.done("desk", invoiceXml, { invoiceId });
    expect(xml).toContain("<cbc:BuyerReference>PO 7</cbc:BuyerReference>");
    expect(xml).toContain('<cbc:EndpointID schemeID="0151">51824753556</cbc:EndpointID>');
  });
});

describe("a credit note", () => {
  test("takes lines back whole, and what the customer owes goes down by as much", async () => {
    const { invoiceId, lines, quoteId, grossMinor } = await invoiced();
    const [line] = lines;
    await trial.done("owner", creditInvoice, credit(invoiceId, { positions: [line?.position] }));
    const { money } = await trial.done("desk", showQuote, { quoteId });
    expect(money?.remainsMinor).toBe(grossMinor - (line?.grossMinor ?? 0));
    const again = credit(invoiceId, { positions: [line?.position] });
    expect((await trial.refused("owner", creditInvoice, again)).code).toBe("line-credited");
  });

  test("of an amount carries the tax that is in it", async () => {
    const { invoiceId } = await invoiced();
    const { invoiceId: noteId } = await trial.done(
      "owner",
      creditInvoice,
      credit(invoiceId, { amount: "1,100" }),
    );
    const [note] = await trial.sql("select net_minor, tax_minor, gross_minor from invoice where id = $1", [
      noteId,
    ]);
    expect(note).toMatchObject({ net_minor: "100000", tax_minor: "10000", gross_minor: "110000" });
    const { bytes, fileName } = await trial.done("desk", invoicePdf, { invoiceId: noteId });
    expect(fileName).toMatch(/^credit-note-/);
    expect(bytes.length).toBeGreaterThan(1_000);
  });

  test("of everything clears the way for another invoice", async () => {
    const { invoiceId, lines, quoteId, number } = await invoiced();
    const positions = lines.map(({ position }) => position);
    await trial.done("owner", creditInvoice, credit(invoiceId, { positions }));
    const { money } = await trial.done("desk", showQuote, { quoteId });
    expect(money?.remainsMinor).toBe(0);
    const next = await trial.done("desk", issueInvoice, asked(quoteId));
    expect(next.number).toBe(number + 2);
    const after = await trial.done("desk", showQuote, { quoteId });
    expect(after.money?.remainsMinor).toBeGreaterThan(0);
  });

  test("is the owner's to write, with a reason, for something that is left", async () => {
    const { invoiceId, grossMinor } = await invoiced();
    const refused = async (who: "desk" | "owner", more: object) =>
      (await trial.refused(who, creditInvoice, credit(invoiceId, more))).code;
    expect(await refused("desk", { amount: "1" })).toBe("not-allowed");
    expect(await refused("owner", { amount: "1", reason: "no" })).toBe("credit-reason");
    expect(await refused("owner", {})).toBe("nothing-chosen");
    expect(await refused("owner", { amount: "a lot" })).toBe("amount-not-valid");
    expect(await refused("owner", { amount: String(grossMinor / 100 + 1) })).toBe("more-than-invoiced");
    const { invoiceId: noteId } = await trial.done(
      "owner",
      creditInvoice,
      credit(invoiceId, { amount: "1" }),
    );
    expect((await trial.refused("owner", creditInvoice, credit(noteId, { amount: "1" }))).code).toBe(
      "not-an-invoice",
    );
    expect((await trial.refused("owner", creditInvoice, credit(newId(), { amount: "1" }))).code).toBe(
      "invoice-not-found",
    );
  });

  test("the database lets no more be credited than was invoiced", async () => {
    const { invoiceId } = await invoiced();
    await expect(
      trial.sql(
        `insert into invoice (id, workshop_id, number, kind, quote_id, version_id, credits_id, reason, issued_on, due_on, currency, net_minor, tax_minor, gross_minor, content, issued_by_id, issued_at)
         select $1, workshop_id, number + 1, 'credit_note', quote_id, version_id, id, 'too much', issued_on, due_on, currency, net_minor + 1, tax_minor, gross_minor + 1, content, issued_by_id, issued_at from invoice where id = $2`,
        [newId(), invoiceId],
      ),
    ).rejects.toThrow(/credit_within_invoice/);
  });
});
