"use client";

import { DateField } from "@/design/date-field";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { recordPaymentAction } from "./actions";
import { paymentMethods } from "./payment-methods";

interface PaymentFormProps {
  readonly quoteId: string;
  readonly currency: string;
  readonly today: string;
  readonly isDepositMet: boolean;
  /** What would complete the deposit or the balance, as typed. */
  readonly suggested: string;
}

/** Records money that came in. */
export function PaymentForm({ quoteId, currency, today, isDepositMet, suggested }: PaymentFormProps) {
  const kind = isDepositMet ? "balance" : "deposit";
  return (
    <ActionForm action={recordPaymentAction} label={`Record the ${kind}`} resetOnSaved>
      <input type="hidden" name="quoteId" value={quoteId} readOnly />
      <input type="hidden" name="kind" value={kind} readOnly />
      <div className="form-row">
        <NumberField
          name="amount"
          label="Amount received"
          prefix={currency}
          help={`To complete it: ${suggested}`}
        />
        <DateField name="receivedOn" label="Received on" defaultValue={today} latest={today} />
      </div>
      <div className="form-row">
        <Select name="method" label="Paid by" options={paymentMethods} defaultValue="transfer" />
        <TextField name="reference" label="Reference" maxLength={120} />
      </div>
      {!isDepositMet && (
        <Select
          name="heldAs"
          label="Held as"
          options={[
            { id: "security", label: "security deposit: tax when it is used or forfeited" },
            { id: "part", label: "part payment: tax when it comes" },
          ]}
          defaultValue="security"
          help="Ask your accountant which one your terms make it."
        />
      )}
      <div className="form-actions">
        <SubmitButton variant={isDepositMet ? "quiet" : "primary"} pendingLabel="Recording">
          {`Record the ${kind}`}
        </SubmitButton>
      </div>
    </ActionForm>
  );
}
