"use server";

import { attachDocument, removeDocument, UploadedFile } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { textOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";

export async function attachDocumentAction(_previous: FormState, form: FormData): Promise<FormState> {
  const file = form.get("file");
  const uploaded =
    file instanceof File
      ? new UploadedFile(file.name, new Uint8Array(await file.arrayBuffer()))
      : new UploadedFile("", new Uint8Array());
  const input = { code: textOf(form, "code"), title: textOf(form, "title"), file: uploaded };
  const { state } = await runForm(attachDocument, input, form, "Attached.");
  if (state.status === "saved") revalidatePath("/catalogue", "layout");
  return state;
}

export async function removeDocumentAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    removeDocument,
    { documentId: textOf(form, "documentId") },
    form,
    "Removed.",
  );
  if (state.status === "saved") revalidatePath("/catalogue", "layout");
  return state;
}
