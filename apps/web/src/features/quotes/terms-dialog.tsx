"use client";

import { Button } from "@/design/button";
import { DateField } from "@/design/date-field";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { TextField } from "@/design/text-field";
import { editTermsAction } from "./actions";
import { HiddenVersion } from "./hidden-version";

interface TermsDialogProps {
  readonly versionId: string;
  readonly revision: number;
  readonly validUntil: string;
  readonly note: string;
  /** As typed: "250.00", empty for none. */
  readonly discount: string;
  readonly discountHelp: string;
  readonly currency: string;
  readonly taxName: string;
  readonly today: string;
}

/** Until when a draft will hold, what is given off the whole, and the note to the customer. */
export function TermsDialog(props: TermsDialogProps) {
  const { validUntil, note, discount, discountHelp, currency, taxName, today, ...seen } = props;
  return (
    <Dialog title="Terms and note" trigger={<Button>Terms and note</Button>}>
      {(close) => (
        <ActionForm action={editTermsAction} label="Terms and note" onSaved={close}>
          <HiddenVersion {...seen} />
          <div className="form-row">
            <DateField name="validUntil" label="Open until" defaultValue={validUntil} earliest={today} />
            <NumberField
              name="discount"
              label={`Off the whole, without ${taxName}`}
              prefix={currency}
              help={discountHelp}
              defaultValue={discount}
            />
          </div>
          <TextField
            name="note"
            label="Note to the customer"
            help="Printed on the quote in your words."
            lines={4}
            defaultValue={note}
          />
          <div className="form-actions">
            <SubmitButton pendingLabel="Saving">Save the terms</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
