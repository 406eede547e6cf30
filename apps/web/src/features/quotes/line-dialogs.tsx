"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { addLineAction, editLineAction, removeLineAction } from "./actions";
import { HiddenVersion } from "./hidden-version";

interface Seen {
  readonly versionId: string;
  readonly revision: number;
}

interface EditLineProps extends Seen {
  readonly line: {
    readonly id: string;
    readonly description: string;
    readonly quantity: string;
    readonly unit: string;
    readonly discountPct: string;
  };
  readonly discountHelp: string;
}

/** Changes or removes one line of a draft. */
export function EditLine({ line, discountHelp, ...seen }: EditLineProps) {
  return (
    <Dialog
      title="Change a line"
      trigger={
        <Button variant="plain" aria-label={`Change ${line.description}`}>
          Change
        </Button>
      }
    >
      {(close) => (
        <>
          <ActionForm action={editLineAction} label="Change a line" onSaved={close}>
            <HiddenVersion {...seen} />
            <input type="hidden" name="lineId" value={line.id} readOnly />
            <TextField name="description" label="Description" defaultValue={line.description} lines={2} />
            <div className="form-row">
              <NumberField
                name="quantity"
                label="Quantity"
                {...(line.unit === "each" ? {} : { unit: line.unit })}
                defaultValue={line.quantity}
              />
              <NumberField
                name="discountPct"
                label="Discount"
                unit="%"
                help={discountHelp}
                defaultValue={line.discountPct}
              />
            </div>
            <div className="form-actions">
              <SubmitButton pendingLabel="Saving">Save the line</SubmitButton>
            </div>
          </ActionForm>
          <ActionForm action={removeLineAction} label="Remove the line" onSaved={close}>
            <HiddenVersion {...seen} />
            <input type="hidden" name="lineId" value={line.id} readOnly />
            <div className="form-actions">
              <SubmitButton variant="danger" pendingLabel="Removing">
                Remove the line
              </SubmitButton>
            </div>
          </ActionForm>
        </>
      )}
    </Dialog>
  );
}

const units = [
  { id: "each", label: "each" },
  { id: "h", label: "hours" },
  { id: "day", label: "days" },
  { id: "km", label: "kilometres" },
  { id: "L", label: "litres" },
];

interface AddLineProps extends Seen {
  readonly currency: string;
  readonly taxName: string;
  readonly discountHelp: string;
  readonly seesCost: boolean;
}

/** Adds a line of its own to a draft. */
export function AddLine({ currency, taxName, discountHelp, seesCost, ...seen }: AddLineProps) {
  return (
    <Dialog title="Add a line" trigger={<Button>Add a line</Button>}>
      {(close) => (
        <ActionForm action={addLineAction} label="Add a line" onSaved={close}>
          <HiddenVersion {...seen} />
          <TextField name="description" label="Description" isRequired autoFocus />
          <div className="form-row">
            <NumberField name="quantity" label="Quantity" defaultValue="1" />
            <Select name="unit" label="Unit" options={units} defaultValue="each" />
          </div>
          <div className="form-row">
            <NumberField
              name="unitPrice"
              label={`Price of one, without ${taxName}`}
              prefix={currency}
              isRequired
            />
            {seesCost && <NumberField name="unitCost" label="What one costs us" prefix={currency} />}
            <NumberField name="discountPct" label="Discount" unit="%" help={discountHelp} defaultValue="0" />
          </div>
          <div className="form-actions">
            <SubmitButton pendingLabel="Adding">Add the line</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
