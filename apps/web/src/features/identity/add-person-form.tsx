"use client";

import type { ReactNode } from "react";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { addPersonAction } from "./people-actions";

/** `children` are the duties to tick. */
export function AddPersonForm({ children }: { readonly children: ReactNode }) {
  return (
    <ActionForm action={addPersonAction} label="Add a person" resetOnSaved>
      <TextField name="name" label="Name" autoComplete="off" isRequired />
      <TextField name="email" label="E-mail" type="email" autoComplete="off" isRequired />
      <TextField
        name="firstPassword"
        label="First password"
        type="password"
        autoComplete="new-password"
        help="At least 12 characters. Hand it over yourself; the person changes it under Account."
        isRequired
      />
      {children}
      <SubmitButton pendingLabel="Adding">Add the person</SubmitButton>
    </ActionForm>
  );
}
