"use client";

import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { copyBuildAction } from "./actions";

/** A second build of the same vehicle, to be changed and compared with this one. */
export function TryAnotherWay({ buildId }: { readonly buildId: string }) {
  return (
    <ActionForm action={copyBuildAction} label="Try another way">
      <input type="hidden" name="buildId" value={buildId} readOnly />
      <SubmitButton variant="quiet" pendingLabel="Copying">
        Try another way
      </SubmitButton>
    </ActionForm>
  );
}
