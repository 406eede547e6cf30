"use client";

import { type ReactNode, startTransition, useActionState, useEffect, useRef, useState } from "react";
import { Form } from "react-aria-components";
import { announce } from "../toast";
import { FormContext } from "./form-context";
import { FormErrors } from "./form-errors";
import { type FormAction, type FormState, idleForm } from "./form-state";
import { requestKey } from "./request-key";

interface ActionFormProps {
  readonly action: FormAction;
  readonly children: ReactNode;
  /** Names the form for those who cannot see its heading. */
  readonly label?: string;
  /** Clears the fields once saved: for forms that add one after another. */
  readonly resetOnSaved?: boolean;
  readonly onSaved?: () => void;
  readonly className?: string;
}

/**
 * The one way to send a form: a server action that answers with a FormState.
 *
 * Nothing typed is lost: with scripts the fields keep what they hold, without them the page is drawn anew
 * with the values handed back. A second press while the first is on its way does nothing, and every send
 * carries `requestKey`, kept until the form is saved, so that a repeated send acts once.
 */
export function ActionForm(props: ActionFormProps) {
  const { action, children, label, resetOnSaved, onSaved, className } = props;
  const [state, send, isPending] = useActionState<FormState, FormData>(action, idleForm);
  const form = useRef<HTMLFormElement>(null);
  // Drawn on the server too: pressed twice before the scripts have come, it still acts once.
  const [key, setKey] = useState(requestKey);
  const answered = useRef<FormState>(state);

  useEffect(() => {
    if (answered.current === state) return;
    answered.current = state;
    if (state.status === "saved") {
      if (state.message) announce(state.message);
      setKey(requestKey());
      if (resetOnSaved) form.current?.reset();
      onSaved?.();
    }
    if (state.status === "refused") focusRefusal(form.current);
  }, [state, resetOnSaved, onSaved]);

  return (
    <FormContext value={{ state, isPending }}>
      <Form
        ref={form}
        action={send}
        aria-label={label}
        className={className ?? "form"}
        validationBehavior="aria"
        onSubmit={(event) => {
          // With the default prevented React does not reset the fields after the action.
          event.preventDefault();
          if (isPending) return;
          const entries = new FormData(event.currentTarget, submitterOf(event.nativeEvent));
          startTransition(() => send(entries));
        }}
      >
        <input type="hidden" name="requestKey" value={key} readOnly suppressHydrationWarning />
        <FormErrors />
        {children}
      </Form>
    </FormContext>
  );
}

function submitterOf(event: Event): HTMLElement | null {
  return event instanceof SubmitEvent ? event.submitter : null;
}

function focusRefusal(form: HTMLFormElement | null): void {
  const field = form?.querySelector<HTMLElement>("[aria-invalid='true']");
  (field ?? form?.querySelector<HTMLElement>("[data-form-errors]"))?.focus();
}
