"use server";

import { attachEvidence, handOver, layOutPaperwork, UploadedFile } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { readNumber } from "@/design/read-number";
import { runForm } from "@/server/run-form";

export async function attachEvidenceAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    attachEvidence,
    {
      obligationId: text(form, "obligationId"),
      file: await uploadedFile(form.get("file")),
      signatoryName: text(form, "signatoryName"),
      note: text(form, "note"),
    },
    form,
    "Evidence attached.",
  );
  return shownAnew(state);
}

export async function layOutAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    layOutPaperwork,
    { jobId: text(form, "jobId") },
    form,
    ({ laidOut }) => `${laidOut} obligations laid out.`,
  );
  return shownAnew(state);
}

export async function handOverAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    handOver,
    {
      jobId: text(form, "jobId"),
      revision: Number(text(form, "revision")),
      receivedBy: text(form, "receivedBy"),
      odometerKm: typedNumber(form, "odometerKm"),
      keys: typedNumber(form, "keys"),
      followUpOn: text(form, "followUpOn") || null,
      note: text(form, "note"),
    },
    form,
    ({ number }) => `Job ${number} is handed over.`,
  );
  return shownAnew(state);
}

function text(form: FormData, name: string): string {
  return String(form.get(name) ?? "");
}

/** What cannot be read stays no number, and the use case says so at its field. */
function typedNumber(form: FormData, name: string): number {
  const read = readNumber(text(form, name));
  return read.ok ? read.value : Number.NaN;
}

async function uploadedFile(entry: FormDataEntryValue | null): Promise<UploadedFile> {
  if (!(entry instanceof File)) return new UploadedFile("", new Uint8Array());
  return new UploadedFile(entry.name, new Uint8Array(await entry.arrayBuffer()));
}

function shownAnew(state: FormState): FormState {
  if (state.status === "saved") revalidatePath("/jobs/[id]", "layout");
  return state;
}
