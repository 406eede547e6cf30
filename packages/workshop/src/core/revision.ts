import { z } from "zod";

/** Two people on one thing: a write names the revision it saw, and a stale one is told what changed. */
export const revision = z.number().int().min(1);

export function staleSentence(thing: string): string {
  return `Somebody else changed this ${thing} while you had it open. What you typed is still here: look at the newer one beside it, then save again.`;
}
