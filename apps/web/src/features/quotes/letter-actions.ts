"use server";

import { acceptVersion, askQuestion, declineVersion, perform, readLetter } from "@buildproof/workshop";
import { refresh } from "next/cache";
import { type FormState, refusedForm, savedForm } from "@/design/forms/form-state";
import { moneyText } from "@/design/money-text";
import { en } from "@/messages/en";
import { text } from "./form-fields";
import { letterContext } from "./letter-context";

export async function acceptAction(token: string, _: FormState, form: FormData): Promise<FormState> {
  const context = await letterContext(token);
  if (!context) return refusedForm({ sentence: `${en.closed.title}. ${en.closed.next}` }, form);
  const letter = await perform(context, readLetter, {});
  if (!letter.ok) return refusedForm(letter.refusal, form);
  const { number, versionNo, totals, currency, workshop } = letter.value;
  const input = {
    versionId: text(form, "versionId"),
    name: text(form, "name"),
    agreed: text(form, "agreed") === "yes",
    statement: en.accept.statement({
      number,
      version: versionNo,
      total: moneyText(totals.grossMinor, currency),
      tax: workshop.taxName,
      workshop: workshop.name,
    }),
  };
  const result = await perform(context, acceptVersion, input, keyOf(form));
  refresh();
  return result.ok ? savedForm(en.accept.done) : refusedForm(result.refusal, form);
}

export async function declineAction(token: string, _: FormState, form: FormData): Promise<FormState> {
  const context = await letterContext(token);
  if (!context) return refusedForm({ sentence: `${en.closed.title}. ${en.closed.next}` }, form);
  const input = { versionId: text(form, "versionId"), reason: text(form, "reason") };
  const result = await perform(context, declineVersion, input, keyOf(form));
  refresh();
  return result.ok ? savedForm(en.decline.done) : refusedForm(result.refusal, form);
}

export async function askAction(token: string, _: FormState, form: FormData): Promise<FormState> {
  const context = await letterContext(token);
  if (!context) return refusedForm({ sentence: `${en.closed.title}. ${en.closed.next}` }, form);
  const result = await perform(context, askQuestion, { text: text(form, "text") }, keyOf(form));
  refresh();
  return result.ok ? savedForm(en.questions.done) : refusedForm(result.refusal, form);
}

/** A press that is repeated acts once. */
function keyOf(form: FormData): { readonly key?: string } {
  const key = text(form, "requestKey");
  return key === "" ? {} : { key };
}
