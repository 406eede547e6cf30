"use server";

import { changePassword, perform, signOutEverywhere } from "@buildproof/workshop";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { requestContext } from "@/server/request-context";
import { runForm } from "@/server/run-form";
import { sessionCookies } from "./session-cookies";

export async function signOutAction(): Promise<void> {
  await dropSession();
  redirect("/sign-in");
}

export async function signOutEverywhereAction(): Promise<void> {
  await perform(await requestContext(), signOutEverywhere, {});
  await dropSession();
  redirect("/sign-in");
}

export async function changePasswordAction(_previous: FormState, form: FormData): Promise<FormState> {
  const outcome = await runForm(
    changePassword,
    { present: String(form.get("presentPassword") ?? ""), next: String(form.get("nextPassword") ?? "") },
    form,
  );
  if (outcome.state.status !== "saved") return outcome.state;
  await dropSession();
  redirect("/sign-in?changed=password");
}

async function dropSession(): Promise<void> {
  const jar = await cookies();
  for (const name of sessionCookies) jar.delete(name);
}
