"use server";

import { countRunAgain, excludeRun, releaseVerdict } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { runForm } from "@/server/run-form";

export async function excludeRunAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    excludeRun,
    { runId: text(form, "runId"), reason: text(form, "reason") },
    form,
    ({ number }) => `Run ${number} is left out.`,
  );
  return shownAnew(state);
}

export async function countRunAgainAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    countRunAgain,
    { runId: text(form, "runId"), reason: text(form, "reason") },
    form,
    ({ number }) => `Run ${number} counts again.`,
  );
  return shownAnew(state);
}

export async function releaseVerdictAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    releaseVerdict,
    { jobId: text(form, "jobId"), seen: text(form, "seen") },
    form,
    ({ sentence }) => `Verdict released. ${sentence}`,
  );
  return shownAnew(state);
}

function text(form: FormData, name: string): string {
  return String(form.get(name) ?? "");
}

function shownAnew(state: FormState): FormState {
  if (state.status === "saved") {
    revalidatePath("/dyno/jobs/[id]", "page");
    revalidatePath("/dyno/vehicles/[id]", "page");
  }
  return state;
}
