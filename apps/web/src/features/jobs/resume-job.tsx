"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { resumeJobAction } from "./actions";

/** Takes a stopped job up again, with its reason. */
export function ResumeJob({ jobId }: { readonly jobId: string }) {
  return (
    <Dialog title="Take this job up again" trigger={<Button>Take the job up again</Button>}>
      {(close) => (
        <ActionForm action={resumeJobAction} label="Take this job up again" onSaved={close}>
          <input type="hidden" name="jobId" value={jobId} readOnly />
          <p>It goes on where it left off. The time that was freed is booked again, through the gate.</p>
          <TextField
            name="reason"
            label="What has changed"
            help="At least 10 characters; it stays on the job beside why it was stopped."
            lines={3}
            isRequired
          />
          <div className="form-actions">
            <SubmitButton pendingLabel="Taking it up">Take the job up again</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
