"use client";

import { Checkbox } from "@/design/checkbox";
import { Disclosure } from "@/design/disclosure";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { en } from "@/messages/en";
import { acceptAction, askAction, declineAction } from "./letter-actions";

interface LinkProps {
  readonly token: string;
  readonly versionId: string;
}

/** The customer's signature: a typed name under the sentence that is accepted. */
export function AcceptForm({ token, versionId, statement }: LinkProps & { readonly statement: string }) {
  return (
    <ActionForm action={acceptAction.bind(null, token)} label={en.accept.title}>
      <input type="hidden" name="versionId" value={versionId} readOnly />
      <Checkbox name="agreed" label={statement} />
      <TextField name="name" label={en.accept.name} autoComplete="name" maxLength={120} />
      <SubmitButton wide pendingLabel={en.accept.pending}>
        {en.accept.button}
      </SubmitButton>
    </ActionForm>
  );
}

export function DeclineForm({ token, versionId }: LinkProps) {
  return (
    <Disclosure title={en.decline.title}>
      <ActionForm action={declineAction.bind(null, token)} label={en.decline.title}>
        <input type="hidden" name="versionId" value={versionId} readOnly />
        <TextField name="reason" label={en.decline.reason} lines={3} maxLength={1_000} />
        <SubmitButton variant="quiet">{en.decline.button}</SubmitButton>
      </ActionForm>
    </Disclosure>
  );
}

export function QuestionForm({ token }: Pick<LinkProps, "token">) {
  return (
    <ActionForm action={askAction.bind(null, token)} label={en.questions.title} resetOnSaved>
      <TextField name="text" label={en.questions.field} lines={3} maxLength={2_000} />
      <SubmitButton variant="quiet" pendingLabel={en.questions.pending}>
        {en.questions.button}
      </SubmitButton>
    </ActionForm>
  );
}
