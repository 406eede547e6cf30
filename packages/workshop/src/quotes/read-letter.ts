import { z } from "zod";
import { ok } from "../core/result";
import { linkQuery } from "../core/use-case";
import { messagesOf } from "./messages-of-quote";
import { refuse } from "./refuse-quote";
import { versionContent } from "./version-content";

/** What the holder of a link reads: the one version that the link opens, and nothing of the workshop's own. */
export const readLetter = linkQuery({
  name: "quotes.read-letter",
  permission: "link:read",
  input: z.strictObject({}),
  async run({ tx, actor, now }) {
    if (actor.kind !== "customer") throw new Error("a customer's use case ran without a link");
    const content = await versionContent(tx, actor.versionId, now);
    if (!content) return refuse("version-not-found");
    const { site, ...letter } = content;
    const { discountLimitPct: _, ...workshop } = site;
    return ok({ ...letter, workshop, messages: await messagesOf(tx, content.quoteId) });
  },
});
