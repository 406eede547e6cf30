"use client";

import { Button } from "@/design/button";
import { DateField } from "@/design/date-field";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import {
  discardVersionAction,
  publishVersionAction,
  renameVersionAction,
  scheduleVersionAction,
  withdrawVersionAction,
} from "./actions";
import { DraftFields } from "./draft-fields";

interface VersionProps {
  readonly version: { readonly id: string; readonly revision: number };
}

/** Another title, or away with the draft and all it changes. */
export function DraftHeadActions({ version, title }: VersionProps & { readonly title: string }) {
  return (
    <>
      <Dialog title="Rename the draft" trigger={<Button>Rename</Button>}>
        {(close) => (
          <ActionForm action={renameVersionAction} label="Rename the draft" onSaved={close}>
            <DraftFields version={version} />
            <TextField
              name="title"
              label="What the draft is for"
              defaultValue={title}
              maxLength={120}
              isRequired
            />
            <SubmitButton pendingLabel="Renaming">Rename</SubmitButton>
          </ActionForm>
        )}
      </Dialog>
      <Dialog title="Discard the draft?" trigger={<Button variant="danger">Discard</Button>} isAlert>
        <ActionForm action={discardVersionAction} label="Discard the draft">
          <DraftFields version={version} />
          <p>All its changes go. The catalogue that is sold from stays as it is.</p>
          <SubmitButton variant="danger" pendingLabel="Discarding">
            Discard the draft
          </SubmitButton>
        </ActionForm>
      </Dialog>
    </>
  );
}

interface PublishProps extends VersionProps {
  /** The first day that can be chosen. */
  readonly tomorrow: string;
  readonly publishOn: string | null;
}

/** Now, or from a day to come. */
export function PublishForms({ version, tomorrow, publishOn }: PublishProps) {
  return (
    <div className="grid gap-4">
      <ActionForm action={publishVersionAction} label="Publish now">
        <DraftFields version={version} />
        <SubmitButton pendingLabel="Publishing">Publish now</SubmitButton>
      </ActionForm>
      <ActionForm action={scheduleVersionAction} label="Publish on a day">
        <DraftFields version={version} />
        <DateField
          name="on"
          label="Or from the beginning of"
          defaultValue={publishOn ?? tomorrow}
          earliest={tomorrow}
          isRequired
        />
        <SubmitButton variant="quiet" pendingLabel="Setting the day">
          {publishOn ? "Set another day" : "Publish on that day"}
        </SubmitButton>
      </ActionForm>
      {publishOn && (
        <ActionForm action={withdrawVersionAction} label="Wait for no day">
          <DraftFields version={version} />
          <SubmitButton variant="quiet" pendingLabel="Taking it back">
            Wait for no day
          </SubmitButton>
        </ActionForm>
      )}
    </div>
  );
}
