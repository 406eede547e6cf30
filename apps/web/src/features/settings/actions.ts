"use server";

import { makeApiToken, newSecretToken, perform, revokeApiToken } from "@buildproof/workshop";
import { refresh, revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { textOf } from "@/server/form-entries";
import { requestContext } from "@/server/request-context";
import { runForm } from "@/server/run-form";
import type { TokenState } from "./token-state";

/** Makes a token and shows it this once: only its hash is kept, so it is sent under no request key. */
export async function makeTokenAction(name: string): Promise<TokenState> {
  const { token, tokenHash } = newSecretToken();
  const result = await perform(await requestContext(), makeApiToken, { name, tokenHash });
  refresh();
  if (!result.ok) return { status: "refused", sentence: result.refusal.sentence };
  return { status: "made", name: result.value.name, token };
}

export async function revokeTokenAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { tokenId: textOf(form, "tokenId") };
  const { state } = await runForm(revokeApiToken, input, form, ({ name }) => `${name} is revoked.`);
  if (state.status === "saved") revalidatePath("/settings");
  return state;
}
