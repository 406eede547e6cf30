"use client";

import type { ShownSheet } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { DateField } from "@/design/date-field";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { editGoalAction } from "./actions";
import { dateText } from "./build-words";

/** What the owner wants and by when, on a sheet of its own. */
export function EditGoal({ sheet }: { readonly sheet: ShownSheet }) {
  return (
    <Dialog title="What the owner wants" trigger={<Button>Change the goal</Button>}>
      {(close) => (
        <ActionForm action={editGoalAction} label="What the owner wants" onSaved={close}>
          <input type="hidden" name="buildId" value={sheet.id} />
          <input type="hidden" name="revision" value={sheet.revision} />
          <p className="fine">
            Now: {sheet.goal}; wanted by {sheet.wantedBy ? dateText(sheet.wantedBy) : "no day given"}.
          </p>
          <TextField name="goal" label="Goal" lines={3} defaultValue={sheet.goal} isRequired />
          <DateField
            name="wantedBy"
            label="Wanted by"
            {...(sheet.wantedBy === null ? {} : { defaultValue: sheet.wantedBy })}
          />
          <SubmitButton pendingLabel="Saving">Save</SubmitButton>
        </ActionForm>
      )}
    </Dialog>
  );
}
