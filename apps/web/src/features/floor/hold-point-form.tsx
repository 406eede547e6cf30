"use client";

import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { signHoldPointAction } from "./actions";
import type { CardView, StepView } from "./card-view";

interface HoldPointFormProps {
  readonly card: CardView;
  readonly step: StepView;
}

/** A second person signs here, with their own e-mail and password; the device stays with the first. */
export function HoldPointForm({ card, step }: HoldPointFormProps) {
  const others = card.signers.filter(({ id }) => id !== card.reader.id).map(({ name }) => name);
  return (
    <ActionForm action={signHoldPointAction} label="Sign the hold point">
      <p>
        {step.isForSignatory
          ? "The licensed signatory looks before this is covered; a second person signs for it here."
          : "A second person looks, then signs here."}{" "}
        {others.length > 0 && `May sign, if they did none of this work: ${others.join(", ")}.`}
      </p>
      <input type="hidden" name="stepId" value={step.id} readOnly />
      {step.isForSignatory && (
        <TextField label="Name on the signatory's licence" name="signatoryName" isRequired />
      )}
      <div className="form-row">
        <TextField label="E-mail of who signs" name="email" type="email" autoComplete="off" isRequired />
        <TextField label="Their password" name="password" type="password" autoComplete="off" isRequired />
      </div>
      <TextField label="Note" name="note" help="What was seen, if it is worth keeping." />
      <SubmitButton wide pendingLabel="Checking">
        Sign
      </SubmitButton>
    </ActionForm>
  );
}
