import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { messageText } from "./ask-question";
import { refuse } from "./refuse-quote";

/** The workshop answers on the quote; the customer reads it behind the same link. */
export const answerQuestion = command({
  name: "quotes.answer",
  permission: "quotes:write",
  input: z.strictObject({ quoteId: z.uuid("Open the quote again and answer there."), text: messageText }),
  async run({ tx, workshopId, person, now, audit }, { quoteId, text }) {
    const quote = await tx.quote.findUnique({ where: { id: quoteId } });
    if (!quote) return refuse("quote-not-found");
    const asked = await tx.quoteMessage.findFirst({
      where: { quoteId, fromCustomer: true },
      orderBy: { at: "desc" },
    });
    if (!asked) return refuse("nothing-asked");
    const id = newId();
    await tx.quoteMessage.create({
      data: {
        id,
        workshopId,
        quoteId,
        versionId: asked.versionId,
        fromCustomer: false,
        text,
        personId: person.id,
        at: now,
      },
    });
    audit({ entity: "quote-message", entityId: id, after: { quoteId, text } });
    return ok({ messageId: id });
  },
});
