import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { linkCommand } from "../core/use-case";
import { lockQuote } from "./lock-quote";
import { refuse } from "./refuse-quote";

/** A person with a real question asks a few; more than this comes from something else. */
const MOST_A_DAY = 12;
const DAY_MS = 86_400_000;

export const messageText = z
  .string()
  .trim()
  .min(3, "Write it in a few words.")
  .max(2_000, "Keep it under 2,000 characters.");

/** The customer asks about the quote that their link opens; it lands on the quote and on the desk's day. */
export const askQuestion = linkCommand({
  name: "quotes.ask",
  permission: "link:ask",
  input: z.strictObject({ text: messageText }),
  async run({ tx, workshopId, actor, now, audit }, { text }) {
    if (actor.kind !== "customer") throw new Error("a customer's use case ran without a link");
    const version = await tx.quoteVersion.findUnique({ where: { id: actor.versionId } });
    if (!version) return refuse("version-not-found");
    const { quoteId } = version;
    // Held, so that many at once are counted one after another.
    await lockQuote(tx, quoteId);
    const since = new Date(now.getTime() - DAY_MS);
    const asked = await tx.quoteMessage.count({ where: { quoteId, fromCustomer: true, at: { gte: since } } });
    if (asked >= MOST_A_DAY) return refuse("asked-too-often");
    const id = newId();
    await tx.quoteMessage.create({
      data: { id, workshopId, quoteId, versionId: version.id, fromCustomer: true, text, at: now },
    });
    audit({ entity: "quote-message", entityId: id, after: { quoteId, text } });
    return ok({ messageId: id });
  },
});
