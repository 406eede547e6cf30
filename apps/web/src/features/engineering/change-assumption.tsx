"use client";

import type { AssumptionChanges, UsedAssumption } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { TextField } from "@/design/text-field";
import { changeAssumptionAction, resetAssumptionAction } from "./actions";
import { assumedText } from "./forecast-words";

interface ChangeAssumptionProps {
  readonly assumption: UsedAssumption;
  readonly change: AssumptionChanges[UsedAssumption["name"]];
  readonly seen: { readonly buildId: string; readonly revision: number };
}

/** Another figure for this build alone, with its reason; or back to what is usual. */
export function ChangeAssumption({ assumption, change, seen }: ChangeAssumptionProps) {
  const { label, unit, usual, used, least, most, isChanged } = assumption;
  return (
    <Dialog
      title={label}
      trigger={
        <Button variant="plain" aria-label={`Change: ${label}`}>
          Change
        </Button>
      }
    >
      {(close) => (
        <div className="grid gap-4">
          <p>
            Usual: {assumedText(usual, unit)}. Possible: {assumedText(least, "")} to {assumedText(most, unit)}
            .
          </p>
          <ActionForm action={changeAssumptionAction} label={label} onSaved={close}>
            <Seen assumption={assumption} seen={seen} />
            <NumberField
              name="value"
              label="Figure for this build"
              {...(unit === "" ? {} : { unit })}
              defaultValue={assumedText(used, "")}
              limits={{ low: least, high: most }}
              isRequired
            />
            <TextField
              name="reason"
              label="Why this build differs"
              help="Stands on the quote’s record."
              lines={2}
              defaultValue={change?.reason ?? ""}
              isRequired
            />
            <SubmitButton pendingLabel="Changing">Change</SubmitButton>
          </ActionForm>
          {isChanged && (
            <ActionForm action={resetAssumptionAction} label={`${label}, as usual`} onSaved={close}>
              <Seen assumption={assumption} seen={seen} />
              <SubmitButton variant="quiet" pendingLabel="Taking back">
                Back to the usual {assumedText(usual, unit)}
              </SubmitButton>
            </ActionForm>
          )}
        </div>
      )}
    </Dialog>
  );
}

function Seen({ assumption, seen }: Pick<ChangeAssumptionProps, "assumption" | "seen">) {
  return (
    <>
      <input type="hidden" name="buildId" value={seen.buildId} />
      <input type="hidden" name="revision" value={seen.revision} />
      <input type="hidden" name="name" value={assumption.name} />
    </>
  );
}
