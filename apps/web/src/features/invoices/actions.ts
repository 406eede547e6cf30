"use server";

import { creditInvoice, issueInvoice } from "@buildproof/workshop";
import { refresh } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { textOf, ticksOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";

export async function issueInvoiceAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    quoteId: textOf(form, "quoteId"),
    dueOn: textOf(form, "dueOn"),
    buyerReference: textOf(form, "buyerReference"),
  };
  const { state } = await runForm(issueInvoice, input, form, ({ number }) => `Invoice ${number} is issued.`);
  refresh();
  return state;
}

export async function creditInvoiceAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    invoiceId: textOf(form, "invoiceId"),
    positions: ticksOf(form, "positions").map(Number),
    amount: textOf(form, "amount"),
    reason: textOf(form, "reason"),
  };
  const { state } = await runForm(
    creditInvoice,
    input,
    form,
    ({ number }) => `Credit note ${number} is written.`,
  );
  refresh();
  return state;
}
