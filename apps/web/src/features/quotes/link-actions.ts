"use server";

import { makeLink, newSecretToken, perform } from "@buildproof/workshop";
import { refresh } from "next/cache";
import { publicAddress } from "@/server/public-address";
import { requestContext } from "@/server/request-context";
import type { LinkState } from "./link-state";

/** Makes a link and shows it this once: only its hash is kept, so it is sent under no request key. */
export async function makeLinkAction(versionId: string): Promise<LinkState> {
  const { token, tokenHash } = newSecretToken();
  const result = await perform(await requestContext(), makeLink, { versionId, tokenHash });
  refresh();
  if (!result.ok) return { status: "refused", sentence: result.refusal.sentence };
  return { status: "made", url: `${await publicAddress()}/q/${token}` };
}
