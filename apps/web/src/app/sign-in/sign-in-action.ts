"use server";

import type { FormState } from "@/design/forms/form-state";
import { refusedForm } from "@/design/forms/form-state";

export async function signInAction(_previous: FormState, form: FormData): Promise<FormState> {
  return refusedForm({ sentence: "Sign-in is not connected yet: ask whoever set this up." }, form);
}
