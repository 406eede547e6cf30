"use client";

import { Button } from "@/design/button";
import { DateField } from "@/design/date-field";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { issueInvoiceAction } from "./actions";

interface IssueInvoiceDialogProps {
  readonly quoteId: string;
  readonly today: string;
}

/** Writes the tax invoice of the accepted version. */
export function IssueInvoiceDialog({ quoteId, today }: IssueInvoiceDialogProps) {
  return (
    <Dialog title="Issue the tax invoice" trigger={<Button>Issue the tax invoice</Button>}>
      {(close) => (
        <ActionForm action={issueInvoiceAction} label="Issue the tax invoice" onSaved={close}>
          <input type="hidden" name="quoteId" value={quoteId} readOnly />
          <p>
            It asks for the accepted version as it stands, and shows what was received. Once issued it does
            not change; what is wrong is taken back by a credit note.
          </p>
          <div className="form-row">
            <DateField name="dueOn" label="To be paid by" defaultValue={today} earliest={today} />
            <TextField
              name="buyerReference"
              label="The customer's order number"
              maxLength={80}
              help="If they gave one."
            />
          </div>
          <div className="form-actions">
            <SubmitButton pendingLabel="Issuing">Issue it</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
