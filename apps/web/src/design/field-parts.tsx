"use client";

import type { ReactNode } from "react";
import { FieldError, Label, Text } from "react-aria-components";

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

/** Help and refusal under the field; both are read out with it. */
export function FieldNotes({ help }: { readonly help?: ReactNode }) {
  return (
    <>
      {help && (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-error" />
    </>
  );
}
