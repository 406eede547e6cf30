"use server";

import { openExample } from "@buildproof/workshop";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { textOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";

/** Opens the example of a limit on a build sheet of its own. */
export async function openExampleAction(_previous: FormState, form: FormData): Promise<FormState> {
  const items = form.getAll("item").filter((each) => typeof each === "string");
  const input = { modelCode: textOf(form, "modelCode"), limit: textOf(form, "limit"), items };
  const { state, value } = await runForm(openExample, input, form);
  if (value) redirect(`/builds/${value.id}`);
  return state;
}
