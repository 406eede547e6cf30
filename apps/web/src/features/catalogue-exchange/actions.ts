"use server";

import {
  checkImport,
  type ImportReport,
  importCatalogue,
  partKinds,
  perform,
  type Refusal,
  UploadedFile,
} from "@buildproof/workshop";
import { textOf } from "@/server/form-entries";
import { requestContext } from "@/server/request-context";

type Answer<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusal: Refusal };

/** Reads the files and answers what they would do. */
export async function checkImportAction(form: FormData): Promise<Answer<ImportReport>> {
  return perform(await requestContext(), checkImport, await importOf(form));
}

/** Makes the draft of what was looked at. */
export async function importAction(form: FormData): Promise<Answer<{ readonly versionId: string }>> {
  const key = textOf(form, "requestKey");
  const input = { ...(await importOf(form)), title: textOf(form, "title"), seen: textOf(form, "seen") };
  return perform(await requestContext(), importCatalogue, input, key === "" ? {} : { key });
}

async function importOf(form: FormData) {
  const sent = form.getAll("files").filter((entry) => entry instanceof File && entry.size > 0);
  const files = await Promise.all(
    sent.map(async (file) =>
      file instanceof File ? new UploadedFile(file.name, new Uint8Array(await file.arrayBuffer())) : null,
    ),
  );
  return {
    files: files.filter((file) => file !== null),
    part: partKinds.find((part) => part === textOf(form, "part")) ?? null,
    absent: textOf(form, "absent") === "go" ? ("go" as const) : ("stay" as const),
  };
}
