"use server";

import { addPerson, changePerson, endSessions, givePassword } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { runForm } from "@/server/run-form";
import { typedDuties, typedText } from "./typed-person";

export async function addPersonAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = {
    name: typedText(form, "name"),
    email: typedText(form, "email"),
    password: typedText(form, "firstPassword"),
    ...typedDuties(form),
  };
  return after(await runForm(addPerson, input, form, ({ name }) => `${name} can sign in now.`));
}

export async function changePersonAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = {
    personId: typedText(form, "personId"),
    active: form.get("active") === "yes",
    ...typedDuties(form),
  };
  return after(await runForm(changePerson, input, form, ({ name }) => `${name}: saved.`));
}

export async function endSessionsAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { personId: typedText(form, "personId") };
  return after(await runForm(endSessions, input, form, ({ name }) => `${name} is signed out everywhere.`));
}

export async function givePasswordAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { personId: typedText(form, "personId"), password: typedText(form, "newPassword") };
  return after(
    await runForm(
      givePassword,
      input,
      form,
      ({ name }) => `${name} signs in with the new password from now on.`,
    ),
  );
}

function after({ state }: { readonly state: FormState }): FormState {
  if (state.status === "saved") revalidatePath("/people", "layout");
  return state;
}
