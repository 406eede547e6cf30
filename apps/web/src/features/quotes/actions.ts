"use server";

import {
  addLine,
  answerQuestion,
  discardDraft,
  draftFromBuild,
  editLine,
  editTerms,
  issueVersion,
  makeVersion,
  recordPayment,
  recordRefund,
  removeLine,
  revokeLink,
  takeBuildAgain,
} from "@buildproof/workshop";
import { refresh } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { runForm } from "@/server/run-form";
import { seenVersion, text } from "./form-fields";

// After each action the page is read anew: a refusal that says "somebody changed this" stands beside the newer state.

export async function draftFromBuildAction(_: FormState, form: FormData): Promise<FormState> {
  const input = { buildId: text(form, "buildId") };
  const { state, value } = await runForm(draftFromBuild, input, form);
  if (value) redirect(`/quotes/${value.quoteId}?version=${value.versionNo}`);
  return state;
}

export async function editLineAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    ...seenVersion(form),
    lineId: text(form, "lineId"),
    description: text(form, "description"),
    quantity: text(form, "quantity"),
    discountPct: text(form, "discountPct"),
  };
  const { state } = await runForm(editLine, input, form, "The line is saved.");
  refresh();
  return state;
}

export async function addLineAction(_: FormState, form: FormData): Promise<FormState> {
  const unit = text(form, "unit");
  const input = {
    ...seenVersion(form),
    description: text(form, "description"),
    quantity: text(form, "quantity"),
    // The use case looks at it and says what may be chosen.
    unit: unit as "each",
    unitPrice: text(form, "unitPrice"),
    unitCost: text(form, "unitCost"),
    discountPct: text(form, "discountPct"),
  };
  const { state } = await runForm(addLine, input, form, "The line is added.");
  refresh();
  return state;
}

export async function removeLineAction(_: FormState, form: FormData): Promise<FormState> {
  const input = { ...seenVersion(form), lineId: text(form, "lineId") };
  const { state } = await runForm(removeLine, input, form, "The line is removed.");
  refresh();
  return state;
}

export async function editTermsAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    ...seenVersion(form),
    validUntil: text(form, "validUntil"),
    note: text(form, "note"),
    discount: text(form, "discount"),
  };
  const { state } = await runForm(editTerms, input, form, "The terms are saved.");
  refresh();
  return state;
}

export async function takeBuildAgainAction(_: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    takeBuildAgain,
    seenVersion(form),
    form,
    "The draft follows the build again.",
  );
  refresh();
  return state;
}

export async function issueAction(_: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    issueVersion,
    seenVersion(form),
    form,
    ({ versionNo }) => `Version ${versionNo} is issued. Make the link for the customer next.`,
  );
  refresh();
  return state;
}

export async function makeVersionAction(_: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(makeVersion, { versionId: text(form, "versionId") }, form);
  if (value) redirect(`/quotes/${value.quoteId}?version=${value.versionNo}`);
  refresh();
  return state;
}

export async function discardDraftAction(_: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(discardDraft, seenVersion(form), form);
  if (value) redirect(`/quotes/${value.quoteId}`);
  refresh();
  return state;
}

export async function revokeLinkAction(_: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(revokeLink, { linkId: text(form, "linkId") }, form, "The link is closed.");
  refresh();
  return state;
}

export async function recordPaymentAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    quoteId: text(form, "quoteId"),
    // The use case looks at both and says what may be chosen.
    kind: text(form, "kind") as "deposit",
    ...(form.has("heldAs") ? { heldAs: text(form, "heldAs") as "security" } : {}),
    method: text(form, "method") as "transfer",
    amount: text(form, "amount"),
    reference: text(form, "reference"),
    receivedOn: text(form, "receivedOn"),
  };
  const { state } = await runForm(recordPayment, input, form, ({ depositMet }) =>
    depositMet ? "Recorded. The deposit is here in full." : "Recorded. Part of the deposit is still to come.",
  );
  refresh();
  return state;
}

export async function recordRefundAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    quoteId: text(form, "quoteId"),
    // The use case looks at it and says what may be chosen.
    method: text(form, "method") as "transfer",
    amount: text(form, "amount"),
    reference: text(form, "reference"),
    paidOn: text(form, "paidOn"),
    reason: text(form, "reason"),
  };
  const { state } = await runForm(recordRefund, input, form, "The refund is recorded.");
  refresh();
  return state;
}

export async function answerAction(_: FormState, form: FormData): Promise<FormState> {
  const input = { quoteId: text(form, "quoteId"), text: text(form, "text") };
  const { state } = await runForm(answerQuestion, input, form, "Your answer is behind the customer's link.");
  refresh();
  return state;
}
