import { type Context, openCustomerLink } from "@buildproof/workshop";
import { contextOf } from "@/server/request-context";

/**
 * The context of whoever holds this token; null when it opens nothing, or when too many wrong ones came from the
 * same address. All of these look the same from outside.
 */
export async function letterContext(token: string): Promise<Context | null> {
  const context = await contextOf({ kind: "nobody" });
  const opened = await openCustomerLink(context, token);
  return opened.ok ? { ...context, actor: opened.actor } : null;
}
