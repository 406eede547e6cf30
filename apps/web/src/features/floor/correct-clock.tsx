"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { LocalTimeField } from "@/features/plan/local-time-field";
import { correctClockAction } from "./actions";

interface CorrectClockProps {
  readonly entryId: string;
  /** The entry in words: whose, on what, from when. */
  readonly entry: string;
  /** The end as it stands, on the workshop's clock; empty while it runs. */
  readonly stoppedAt: string;
}

/** Sets the end of a clock entry right, with its reason. */
export function CorrectClock({ entryId, entry, stoppedAt }: CorrectClockProps) {
  return (
    <Dialog
      title="Correct the clock"
      trigger={<Button aria-label={`Correct the clock: ${entry}`}>Correct</Button>}
    >
      {(close) => (
        <ActionForm action={correctClockAction} label="Correct the clock" onSaved={close}>
          <input type="hidden" name="entryId" value={entryId} readOnly />
          <p>{entry}. What stands there now is kept in the audit record.</p>
          <EndField stoppedAt={stoppedAt} />
          <TextField
            name="reason"
            label="Why it is corrected"
            help="At least 10 characters; shown beside the entry with your name."
            lines={2}
            isRequired
          />
          <div className="form-actions">
            <SubmitButton pendingLabel="Correcting">Correct the clock</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}

function EndField({ stoppedAt }: Pick<CorrectClockProps, "stoppedAt">) {
  const [typed, setTyped] = useState(stoppedAt);
  return <LocalTimeField name="stoppedAt" label="The work ended" value={typed} onChange={setTyped} />;
}
