"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { FileField } from "@/design/file-field";
import { ActionForm } from "@/design/forms/action-form";
import { type FormState, refusedForm } from "@/design/forms/form-state";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { attachEvidenceAction } from "./actions";

interface AttachEvidenceProps {
  readonly obligationId: string;
  readonly title: string;
  readonly asksSignatory: boolean;
}

const LARGEST_BYTES = 20 * 1024 * 1024;

/** Attaches a file to an obligation. */
export function AttachEvidence({ obligationId, title, asksSignatory }: AttachEvidenceProps) {
  return (
    <Dialog title={title} trigger={<Button aria-label={`Attach: ${title}`}>Attach</Button>}>
      {(close) => (
        <ActionForm action={attach} label={`Attach: ${title}`} onSaved={close}>
          <input type="hidden" name="obligationId" value={obligationId} readOnly />
          <FileField
            name="file"
            label="File"
            help="PDF, or a photo as JPEG, PNG, WebP or HEIC; at most 20 MB."
            accept="application/pdf,image/jpeg,image/png,image/webp,image/heic"
            isRequired
          />
          {asksSignatory && <TextField name="signatoryName" label="Signed by" isRequired />}
          <TextField name="note" label="Note" help="Certificate number, conditions: what the reader needs." />
          <div className="form-actions">
            <SubmitButton pendingLabel="Attaching">Attach the file</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}

/** A file that is too large is told before it is sent; the workshop looks again. */
async function attach(previous: FormState, form: FormData): Promise<FormState> {
  const file = form.get("file");
  if (file instanceof File && file.size > LARGEST_BYTES) {
    const sentence = `The file has ${Math.ceil(file.size / 1024 / 1024)} MB; at most 20 MB are taken. Scan it smaller or split it.`;
    return refusedForm({ sentence, field: "file" }, form);
  }
  return attachEvidenceAction(previous, form);
}
