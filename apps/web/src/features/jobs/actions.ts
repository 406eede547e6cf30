"use server";

import { clearFault, countGoodsIn, finishWork, resumeJob, stopJob } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { runForm } from "@/server/run-form";

export async function countGoodsInAction(_previous: FormState, form: FormData): Promise<FormState> {
  const complete = form.get("complete");
  const { state } = await runForm(
    countGoodsIn,
    {
      jobId: jobIdOf(form),
      // Neither chosen reaches the use case as what it is, and is refused there.
      complete: (complete === "yes" ? true : complete === "no" ? false : undefined) as boolean,
      missing: String(form.get("missing") ?? ""),
    },
    form,
    ({ complete: all }) => (all ? "Parts counted: complete." : "Count recorded; stores can chase the rest."),
  );
  return shownAnew(state);
}

export async function settleFaultAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    clearFault,
    { faultId: String(form.get("faultId") ?? ""), because: String(form.get("because") ?? "") },
    form,
    "The fault is settled.",
  );
  return shownAnew(state);
}

export async function finishWorkAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(finishWork, { jobId: jobIdOf(form) }, form, "The work is declared done.");
  return shownAnew(state);
}

export async function stopJobAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    stopJob,
    { jobId: jobIdOf(form), reason: String(form.get("reason") ?? "") },
    form,
    ({ bookingsFreed }) => `The job is stopped; ${bookingsFreed} bookings are free again.`,
  );
  return shownAnew(state);
}

export async function resumeJobAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    resumeJob,
    { jobId: jobIdOf(form), reason: String(form.get("reason") ?? "") },
    form,
    ({ statusWords }) => `The job goes on: ${statusWords}.`,
  );
  return shownAnew(state);
}

function jobIdOf(form: FormData): string {
  return String(form.get("jobId") ?? "");
}

function shownAnew(state: FormState): FormState {
  if (state.status === "saved") revalidatePath("/jobs/[id]", "page");
  return state;
}
