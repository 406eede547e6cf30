"use client";

import { Button } from "@/design/button";
import { Checkbox } from "@/design/checkbox";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { moneyText } from "@/design/money-text";
import { NumberField } from "@/design/number-field";
import { TextField } from "@/design/text-field";
import { creditInvoiceAction } from "./actions";
import type { ShownInvoice } from "./shown-invoice";

/** Takes an invoice back: lines of it whole, or an amount. */
export function CreditDialog({
  invoice,
  taxName,
}: {
  readonly invoice: ShownInvoice;
  readonly taxName: string;
}) {
  const { id, number, currency, lines, leftMinor } = invoice;
  return (
    <Dialog title={`Credit invoice ${number}`} trigger={<Button variant="plain">Credit</Button>}>
      {(close) => (
        <ActionForm action={creditInvoiceAction} label={`Credit invoice ${number}`} onSaved={close}>
          <input type="hidden" name="invoiceId" value={id} readOnly />
          <fieldset>
            <legend>Lines to take back whole</legend>
            {lines.map(({ position, description, grossMinor, isCredited }) => (
              <Checkbox
                key={position}
                name="positions"
                value={String(position)}
                isDisabled={isCredited}
                label={`${description}, ${moneyText(grossMinor, currency)}`}
                note={isCredited && "Taken back already."}
              />
            ))}
          </fieldset>
          <NumberField
            name="amount"
            label={`Or an amount off the whole, incl. ${taxName}`}
            prefix={currency}
            help={`At most ${moneyText(leftMinor, currency)}. With an amount the ticks above do not count.`}
          />
          <TextField name="reason" label="Why, as the customer reads it" lines={3} isRequired />
          <div className="form-actions">
            <SubmitButton pendingLabel="Writing">Write the credit note</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
