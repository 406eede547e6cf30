"use server";

import { recordCost, recordedKinds } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { runForm } from "@/server/run-form";
import { typedText } from "../identity/typed-person";

export async function recordCostAction(_previous: FormState, form: FormData): Promise<FormState> {
  const kind = typedText(form, "kind");
  const input = {
    jobId: typedText(form, "jobId"),
    // What is none of the kinds is left to the use case to refuse.
    kind: recordedKinds.find((known) => known === kind) ?? ("" as "parts"),
    description: typedText(form, "description"),
    amount: typedText(form, "amount"),
    on: typedText(form, "on"),
  };
  const { state } = await runForm(recordCost, input, form, ({ number }) => `Recorded on job ${number}.`);
  if (state.status === "saved") revalidatePath("/owner", "layout");
  return state;
}
