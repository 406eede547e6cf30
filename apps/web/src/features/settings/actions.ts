"use server";

import { changeSite, makeApiToken, newSecretToken, perform, revokeApiToken } from "@buildproof/workshop";
import { refresh, revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { numberOf, textOf } from "@/server/form-entries";
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

export async function changeSiteAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = {
    siteId: textOf(form, "siteId"),
    designAmbientC: numberOf(form, "designAmbientC"),
    altitudeM: numberOf(form, "altitudeM"),
    seen: { designAmbientC: numberOf(form, "seenAmbientC"), altitudeM: numberOf(form, "seenAltitudeM") },
  };
  const { state } = await runForm(changeSite, input, form, ({ name }) => `${name} is changed.`);
  if (state.status === "saved") revalidatePath("/settings");
  return state;
}
