"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { settleFaultAction } from "./actions";

/** The manager settles a fault: repaired, agreed with the customer, or found to be none. */
export function SettleFault({ faultId, sentence }: { readonly faultId: string; readonly sentence: string }) {
  return (
    <Dialog title="Settle this fault" trigger={<Button aria-label={`Settle: ${sentence}`}>Settle</Button>}>
      {(close) => (
        <ActionForm action={settleFaultAction} label="Settle this fault" onSaved={close}>
          <input type="hidden" name="faultId" value={faultId} readOnly />
          <p>{sentence}</p>
          <TextField
            name="because"
            label="How it was settled"
            help="Repaired and by whom, or agreed with the customer and how. At least 10 characters; recorded with your name."
            lines={3}
            isRequired
          />
          <div className="form-actions">
            <SubmitButton pendingLabel="Recording">Settle the fault</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
