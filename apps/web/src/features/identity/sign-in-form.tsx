"use client";

import { signIn } from "next-auth/react";
import type { ReactNode } from "react";
import { type FormState, refusedForm, savedForm } from "@/design/forms/form-state";
import { SignInSheet } from "@/shell/sign-in-sheet";

// One sentence for every cause: nobody learns which accounts exist or are closed for a while.
const failed =
  "That e-mail and password do not match, or there were too many tries. Check both, or wait fifteen minutes and try again.";
const away = "The workshop does not answer. Check the connection and try again.";

/** The door, joined to the session. */
export function SignInForm({
  next,
  picture,
  note,
}: {
  readonly next: string;
  readonly picture: ReactNode;
  readonly note?: ReactNode;
}) {
  return <SignInSheet action={enter} next={next} picture={picture} note={note} />;
}

async function enter(_previous: FormState, form: FormData): Promise<FormState> {
  try {
    const answer = await signIn("credentials", {
      redirect: false,
      email: String(form.get("email") ?? ""),
      password: String(form.get("password") ?? ""),
    });
    if (!answer?.ok) return refusedForm({ sentence: failed }, form);
  } catch {
    return refusedForm({ sentence: away }, form);
  }
  // A whole page load, so that nothing drawn for nobody stays on screen.
  window.location.assign(String(form.get("next") ?? "/"));
  return savedForm();
}
