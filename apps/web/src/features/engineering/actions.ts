"use server";

import { changeAssumption, resetAssumption } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { numberOf, textOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";

export async function changeAssumptionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = {
    ...seenOf(form),
    value: numberOf(form, "value"),
    reason: textOf(form, "reason"),
  };
  const { state } = await runForm(changeAssumption, input, form, "The assumption is changed.");
  revalidatePath(`/builds/${textOf(form, "buildId")}`);
  return state;
}

export async function resetAssumptionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(resetAssumption, seenOf(form), form, "As usual again.");
  revalidatePath(`/builds/${textOf(form, "buildId")}`);
  return state;
}

function seenOf(form: FormData) {
  return {
    buildId: textOf(form, "buildId"),
    revision: numberOf(form, "revision"),
    // What is no name of an assumption is refused by the use case.
    name: textOf(form, "name") as "octaneNumber",
  };
}
