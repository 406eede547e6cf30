"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { stopJobAction } from "./actions";

/** Stops a job, with its reason. */
export function StopJob({ jobId }: { readonly jobId: string }) {
  return (
    <Dialog title="Stop this job" trigger={<Button variant="danger">Stop the job</Button>}>
      {(close) => (
        <ActionForm action={stopJobAction} label="Stop this job" onSaved={close}>
          <input type="hidden" name="jobId" value={jobId} readOnly />
          <p>
            Time booked from now on becomes free. Refit, restocking and storage are settled with the customer.
          </p>
          <TextField name="reason" label="Why it stops" lines={3} isRequired />
          <div className="form-actions">
            <SubmitButton variant="danger" pendingLabel="Stopping">
              Stop the job
            </SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
