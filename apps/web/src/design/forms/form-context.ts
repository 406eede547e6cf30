"use client";

import { createContext, useContext } from "react";
import { type FormState, fieldSentences } from "./form-state";

interface FormContextValue {
  readonly state: FormState;
  readonly isPending: boolean;
}

export const FormContext = createContext<FormContextValue>({ state: { status: "idle" }, isPending: false });

export function useFormState(): FormContextValue {
  return useContext(FormContext);
}

/**
 * What the field of that name was refused for. It stands until the form is answered again: a line that went
 * when the field is left would move the button under the finger that is pressing it.
 */
export function useFieldRefusal(name: string | undefined): string | undefined {
  const { state } = useContext(FormContext);
  if (name === undefined || state.status !== "refused") return undefined;
  return fieldSentences(state.refusal)[name];
}

/** What the field starts with: what was typed before a refusal, else what is stored. */
export function useTypedValue(name: string | undefined, stored: string | undefined): string | undefined {
  const { state } = useContext(FormContext);
  if (name === undefined || state.status !== "refused") return stored;
  const typed = state.values?.[name];
  if (typed === undefined) return stored;
  return typeof typed === "string" ? typed : typed[0];
}

/** Whether a tick starts set: as it was when refused, else as stored. An unticked box sends nothing at all. */
export function useTypedTick(name: string | undefined, value: string, stored: boolean): boolean {
  const { state } = useContext(FormContext);
  if (name === undefined || state.status !== "refused" || state.values === undefined) return stored;
  const typed = state.values[name];
  return Array.isArray(typed) ? typed.includes(value) : typed === value;
}
