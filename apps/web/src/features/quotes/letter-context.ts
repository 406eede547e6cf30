import { type Context, openCustomerLink } from "@buildproof/workshop";
import { headers } from "next/headers";
import { lastAddress } from "@/server/auth-options";
import { house } from "@/server/house";
import { contextOf } from "@/server/request-context";
import { linkTries } from "./link-tries";

/**
 * The context of whoever holds this token; null when it opens nothing, or when too many wrong ones came from the
 * same address. All of these look the same from outside.
 */
export async function letterContext(token: string): Promise<Context | null> {
  const address = lastAddress((await headers()).get("x-forwarded-for"));
  if (await linkTries.areSpent(address)) return null;
  const opened = await openCustomerLink({ database: house().database, now: () => new Date() }, token);
  if (opened.ok) return contextOf(opened.actor);
  await linkTries.countWrong(address);
  return null;
}
