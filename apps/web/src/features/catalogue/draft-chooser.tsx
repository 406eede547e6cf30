"use client";

import { useState } from "react";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { openInDraftAction } from "./actions";

interface DraftChooserProps {
  readonly drafts: readonly { readonly id: string; readonly title: string }[];
  readonly part: string;
  /** Empty: the draft itself is opened. */
  readonly code: string;
  readonly title: string;
  readonly button: string;
}

const fresh = "new";

/** Everything is changed in a draft: one that is open, or a new one. */
export function DraftChooser({ drafts, part, code, title, button }: DraftChooserProps) {
  const [draft, setDraft] = useState(drafts[0]?.id ?? fresh);
  return (
    <ActionForm action={openInDraftAction} label={button}>
      <input type="hidden" name="part" value={part} readOnly />
      <input type="hidden" name="code" value={code} readOnly />
      {drafts.length > 0 && (
        <Select
          name="draft"
          label="In which draft"
          options={[
            ...drafts.map(({ id, title: name }) => ({ id, label: name })),
            { id: fresh, label: "A new draft" },
          ]}
          value={draft}
          onChange={setDraft}
        />
      )}
      {draft === fresh && (
        <TextField
          name="title"
          label="What the draft is for"
          defaultValue={title}
          help="In a few words; it stands in the list of versions."
          maxLength={120}
          isRequired
        />
      )}
      <SubmitButton pendingLabel="Opening">{button}</SubmitButton>
    </ActionForm>
  );
}
