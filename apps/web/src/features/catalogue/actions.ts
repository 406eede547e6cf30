"use server";

import {
  changePart,
  discardVersion,
  goBack,
  keepChange,
  markSample,
  partKinds,
  publishVersion,
  renameVersion,
  saveItem,
  saveRule,
  scheduleVersion,
  startVersion,
  undoChange,
  withdrawVersion,
} from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { numberOf, orNull, textOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";
import { editHref } from "./catalogue-words";
import { typedItem, typedPart } from "./typed-part";

export async function openInDraftAction(_previous: FormState, form: FormData): Promise<FormState> {
  const part = partOf(form);
  const code = textOf(form, "code");
  const chosen = textOf(form, "draft");
  if (chosen !== "" && chosen !== "new") redirect(placeIn(chosen, part, code));
  const { state, value } = await runForm(startVersion, { title: textOf(form, "title") }, form);
  if (!value) return state;
  revalidatePath("/catalogue", "layout");
  redirect(placeIn(value.versionId, part, code));
}

export async function saveItemAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(saveItem, { ...draftOf(form), ...typedItem(form) }, form);
  return backToDraft(form, state);
}

export async function saveRuleAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = {
    ...draftOf(form),
    code: textOf(form, "code"),
    isNew: textOf(form, "isNew") === "yes",
    // Put together on the form as JSON; the use case reads it against its own schema.
    rule: JSON.parse(textOf(form, "rule") || "null"),
  };
  const { state } = await runForm(saveRule, input, form);
  return backToDraft(form, state);
}

export async function savePartAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(changePart, { ...draftOf(form), ...typedPart(form) }, form);
  return backToDraft(form, state);
}

export async function removePartAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { ...draftOf(form), part: partOf(form), code: textOf(form, "code"), after: null };
  const { state } = await runForm(changePart, input, form);
  return backToDraft(form, state);
}

export async function undoChangeAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { ...draftOf(form), part: partOf(form), code: textOf(form, "code") };
  const { state } = await runForm(undoChange, input, form, "The change is undone.");
  return shownAnew(state);
}

export async function keepChangeAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { ...draftOf(form), part: partOf(form), code: textOf(form, "code") };
  const { state } = await runForm(keepChange, input, form, "Your change is kept.");
  return shownAnew(state);
}

export async function renameVersionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { ...draftOf(form), title: textOf(form, "title") };
  const { state } = await runForm(renameVersion, input, form, "Renamed.");
  return shownAnew(state);
}

export async function discardVersionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(discardVersion, draftOf(form), form);
  if (state.status !== "saved") return state;
  revalidatePath("/catalogue", "layout");
  redirect("/catalogue/versions");
}

export async function publishVersionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    publishVersion,
    draftOf(form),
    form,
    ({ number }) => `Version ${number} is published: it is what is sold from now on.`,
  );
  return shownAnew(state);
}

export async function scheduleVersionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { ...draftOf(form), on: textOf(form, "on") };
  const { state } = await runForm(scheduleVersion, input, form, ({ on }) => `It will hold from ${on}.`);
  return shownAnew(state);
}

export async function withdrawVersionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(withdrawVersion, draftOf(form), form, "It waits for no day any more.");
  return shownAnew(state);
}

export async function goBackAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(goBack, { number: numberOf(form, "number") }, form);
  if (!value) return state;
  revalidatePath("/catalogue", "layout");
  redirect(`/catalogue/versions/${value.versionId}`);
}

export async function markSampleAction(_previous: FormState, form: FormData): Promise<FormState> {
  const isSample = textOf(form, "isSample") === "yes";
  const input = { number: orNull(form, "number", numberOf) ?? Number.NaN, isSample };
  const { state } = await runForm(markSample, input, form, ({ number }) =>
    isSample ? `Build ${number} is a sample now.` : `Build ${number} is no sample any more.`,
  );
  return shownAnew(state);
}

function draftOf(form: FormData) {
  return { versionId: textOf(form, "versionId"), revision: numberOf(form, "revision") };
}

function partOf(form: FormData) {
  const named = textOf(form, "part");
  return partKinds.find((part) => part === named) ?? "item";
}

function placeIn(versionId: string, part: ReturnType<typeof partOf>, code: string): string {
  return code === "" ? `/catalogue/versions/${versionId}` : editHref(versionId, part, code);
}

function backToDraft(form: FormData, state: FormState): FormState {
  if (state.status !== "saved") return state;
  revalidatePath("/catalogue", "layout");
  redirect(`/catalogue/versions/${textOf(form, "versionId")}`);
}

function shownAnew(state: FormState): FormState {
  if (state.status === "saved") revalidatePath("/catalogue", "layout");
  return state;
}
