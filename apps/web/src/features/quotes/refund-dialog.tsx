"use client";

import { Button } from "@/design/button";
import { DateField } from "@/design/date-field";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { recordRefundAction } from "./actions";
import { paymentMethods } from "./payment-methods";

interface RefundDialogProps {
  readonly quoteId: string;
  readonly currency: string;
  readonly today: string;
  /** What can go back at most, as text. */
  readonly held: string;
}

/** Records money that went back to the customer, with its reason. */
export function RefundDialog({ quoteId, currency, today, held }: RefundDialogProps) {
  return (
    <Dialog title="Record a refund" trigger={<Button>Record a refund</Button>}>
      {(close) => (
        <ActionForm action={recordRefundAction} label="Record a refund" onSaved={close}>
          <input type="hidden" name="quoteId" value={quoteId} readOnly />
          <p>
            Pay the money back first, then record it here: the entry stays as it is. What the accepted version
            asks does not change.
          </p>
          <div className="form-row">
            <NumberField
              name="amount"
              label="Amount paid back"
              prefix={currency}
              help={`At most ${held}, which is what is here.`}
            />
            <DateField name="paidOn" label="Paid back on" defaultValue={today} latest={today} />
          </div>
          <div className="form-row">
            <Select name="method" label="Paid back by" options={paymentMethods} defaultValue="transfer" />
            <TextField name="reference" label="Reference" maxLength={120} />
          </div>
          <TextField name="reason" label="Why it goes back" lines={3} isRequired />
          <div className="form-actions">
            <SubmitButton pendingLabel="Recording">Record the refund</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
