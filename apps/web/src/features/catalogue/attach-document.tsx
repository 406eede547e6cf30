"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { FileField } from "@/design/file-field";
import { ActionForm } from "@/design/forms/action-form";
import { type FormState, refusedForm } from "@/design/forms/form-state";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { attachDocumentAction } from "./document-actions";

const LARGEST_BYTES = 20 * 1024 * 1024;

/** Attaches a sheet, a drawing or a certificate to an item. */
export function AttachDocument({ code }: { readonly code: string }) {
  return (
    <Dialog title="Attach a document" trigger={<Button>Attach</Button>}>
      {(close) => (
        <ActionForm action={attach} label="Attach a document" onSaved={close}>
          <input type="hidden" name="code" value={code} readOnly />
          <TextField name="title" label="Title" maxLength={120} isRequired />
          <FileField
            name="file"
            label="File"
            help="PDF, or a picture as JPEG, PNG, WebP or HEIC; at most 20 MB."
            accept="application/pdf,image/jpeg,image/png,image/webp,image/heic"
            isRequired
          />
          <SubmitButton pendingLabel="Attaching">Attach</SubmitButton>
        </ActionForm>
      )}
    </Dialog>
  );
}

/** A file that is too large is told before it is sent; the workshop looks again. */
async function attach(previous: FormState, form: FormData): Promise<FormState> {
  const file = form.get("file");
  if (file instanceof File && file.size > LARGEST_BYTES)
    return refusedForm(
      { sentence: "The file has more than 20 MB. Make it smaller or split it.", field: "file" },
      form,
    );
  return attachDocumentAction(previous, form);
}
