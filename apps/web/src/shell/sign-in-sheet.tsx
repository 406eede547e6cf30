import type { ReactNode } from "react";
import { ActionForm } from "@/design/forms/action-form";
import type { FormAction } from "@/design/forms/form-state";
import { SubmitButton } from "@/design/forms/submit-button";
import { TextField } from "@/design/text-field";
import { Mark } from "./mark";

interface SignInSheetProps {
  readonly action: FormAction;
  /** Where to go afterwards, within the workshop. */
  readonly next?: string;
  /** Shown beside the form where there is room. */
  readonly picture: ReactNode;
  /** What to know before signing in. */
  readonly note?: ReactNode;
}

/** The door: e-mail, password, and what the place is about. */
export function SignInSheet({ action, next, picture, note }: SignInSheetProps) {
  return (
    <main className="door" id="content">
      <div className="door-sheet">
        <p className="door-name">
          <Mark />
          Buildproof
        </p>
        <h1>Sign in to the workshop</h1>
        {note}
        <ActionForm action={action} label="Sign in">
          {next && <input type="hidden" name="next" value={next} />}
          <TextField name="email" label="E-mail" type="email" autoComplete="username" isRequired autoFocus />
          <TextField
            name="password"
            label="Password"
            type="password"
            autoComplete="current-password"
            isRequired
          />
          <SubmitButton wide pendingLabel="Checking">
            Sign in
          </SubmitButton>
        </ActionForm>
      </div>
      <div className="door-picture">{picture}</div>
    </main>
  );
}
