"use client";

import { DateField } from "@/design/date-field";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import type { Option } from "@/design/options";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { recordCostAction } from "./actions";

interface RecordCostFormProps {
  readonly jobId: string;
  readonly kinds: readonly Option[];
  readonly today: string;
  readonly currency: string;
}

/** A supplier's invoice, or another cost of the job beside the clock. */
export function RecordCostForm({ jobId, kinds, today, currency }: RecordCostFormProps) {
  return (
    <ActionForm action={recordCostAction} label="Record a cost" resetOnSaved>
      <input type="hidden" name="jobId" value={jobId} />
      <Select name="kind" label="For" options={kinds} isRequired />
      <TextField
        name="description"
        label="What it is"
        help="The supplier and the invoice number, for example."
        maxLength={200}
        isRequired
      />
      <NumberField
        name="amount"
        label="Amount without tax"
        unit={currency}
        help="A credit note with a minus before it."
        isRequired
      />
      <DateField name="on" label="Dated" defaultValue={today} latest={today} isRequired />
      <SubmitButton pendingLabel="Recording">Record the cost</SubmitButton>
    </ActionForm>
  );
}
