import type { Actor, Context } from "@buildproof/workshop";
import { headers } from "next/headers";
import { getServerSession } from "next-auth";
import { authOptions, lastAddress } from "./auth-options";
import { house } from "./house";

/** The context of this request, acting as whoever is signed in. */
export async function requestContext(): Promise<Context> {
  const session = await getServerSession(authOptions);
  return contextOf(session?.user ? { kind: "person", ...session.user } : { kind: "nobody" });
}

/** The context of this request, acting as somebody else than a signed-in person: the holder of a link. */
export async function contextOf(actor: Actor): Promise<Context> {
  const sent = await headers();
  return {
    ...house(),
    actor,
    now: () => new Date(),
    requestId: sent.get("x-request-id") ?? crypto.randomUUID(),
    address: lastAddress(sent.get("x-forwarded-for")),
  };
}
