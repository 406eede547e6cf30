"use client";

import type { planCopy, ValueOf } from "@buildproof/workshop";
import { useRouter } from "next/navigation";
import { useRef } from "react";
import { Button } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { copyPackageAction } from "./actions";
import { leaveOut, replacementField } from "./replacements-of";

interface CopyFormProps {
  readonly code: string;
  readonly plan: ValueOf<typeof planCopy>;
}

/** What takes the place of each item that does not fit, and the name of the copy. */
export function CopyForm({ code, plan }: CopyFormProps) {
  const router = useRouter();
  const fields = useRef<HTMLDivElement>(null);
  const { draft, model, missing, name } = plan;
  // The page works the copy out anew with what is chosen.
  const workOut = () => {
    const form = fields.current?.closest("form");
    if (!form) return;
    const entries = [...new FormData(form)].filter(([field]) => field.startsWith(replacementField("")));
    const query = new URLSearchParams(entries.map(([field, value]) => [field, String(value)]));
    query.set("to", model.code);
    if (draft) query.set("draft", draft.id);
    router.replace(`/catalogue/packages/${code}/copy?${query}`, { scroll: false });
  };
  return (
    <ActionForm action={copyPackageAction} label="Copy the package">
      <input type="hidden" name="code" value={code} />
      <input type="hidden" name="modelCode" value={model.code} />
      <input type="hidden" name="versionId" value={draft?.id ?? ""} />
      <input type="hidden" name="revision" value={draft?.revision ?? 1} />
      <div ref={fields}>
        {missing.map((each) => (
          <Select
            key={`${each.place} ${each.code}`}
            name={replacementField(each.code)}
            label={each.name}
            help={
              each.proposals.length === 0
                ? `${each.place}; nothing of its kind fits the ${model.name}`
                : `${each.place}; what fits of its kind`
            }
            defaultValue={each.instead ?? leaveOut.id}
            options={[...each.proposals.map((one) => ({ id: one.code, label: one.name })), leaveOut]}
          />
        ))}
      </div>
      {missing.length > 0 && (
        <div className="form-actions">
          <Button onPress={workOut}>Work it out with these</Button>
        </div>
      )}
      <TextField name="name" label="Name of the copy" defaultValue={`${name}, ${model.name}`} isRequired />
      <div className="form-actions">
        <SubmitButton pendingLabel="Copying">
          {draft ? "Copy into the draft" : "Copy into a new draft"}
        </SubmitButton>
      </div>
    </ActionForm>
  );
}
