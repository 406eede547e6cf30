"use client";

import type { ReactNode } from "react";
import { FieldError, Label, Text } from "react-aria-components";
import { useFieldRefusal } from "./forms/form-context";

/** What every field takes: its name in the form, its label, and a line of help. */
export interface FieldProps {
  readonly name?: string;
  readonly label: string;
  readonly help?: ReactNode;
  readonly isRequired?: boolean;
  readonly isDisabled?: boolean;
}

export function FieldLabel({ label, isRequired }: { readonly label: string; readonly isRequired?: boolean }) {
  return (
    <Label className="field-label">
      {label}
      {isRequired && <span className="field-required"> (required)</span>}
    </Label>
  );
}

/** Marks a field its form was refused for; spread into the control, beside its FieldNotes of the same name. */
export function useRefused(name: string | undefined): { readonly isInvalid?: true } {
  return useFieldRefusal(name) === undefined ? {} : { isInvalid: true };
}

interface FieldNotesProps extends Pick<FieldProps, "name"> {
  readonly help?: ReactNode;
}

/** Help and refusal under the field; both are read out with it. */
export function FieldNotes({ name, help }: FieldNotesProps) {
  return (
    <>
      {help && (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FieldRefusal name={name} />
    </>
  );
}

/** The form's refusal of this field, else what the control itself cannot take (a day outside its limits). */
export function FieldRefusal({ name }: Pick<FieldProps, "name">) {
  const refusal = useFieldRefusal(name);
  return (
    <FieldError className="field-error">
      {({ validationErrors }) => refusal ?? validationErrors.join(" ")}
    </FieldError>
  );
}
