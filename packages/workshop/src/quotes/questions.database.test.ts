import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { newIssued, newLink } from "../testing/quote-story";
import { showToday } from "../today/show-today";
import { answerQuestion } from "./answer-question";
import { askQuestion } from "./ask-question";
import { readLetter } from "./read-letter";
import { showQuote } from "./show-quote";

const trial = demoWorkshop();

async function sent() {
  const issued = await newIssued(trial);
  return { ...issued, ...(await newLink(trial, issued.versionId)) };
}

const later = (ms: number) => new Date(demoNow.getTime() + ms);

const waiting = async (quoteId: string) => {
  const { owed } = await trial.done("desk", showToday, {});
  return owed.filter(({ kind, action }) => kind === "question" && action.id === quoteId);
};

describe("a question on a quote", () => {
  test("lands on the quote and on the desk's day, until it is answered for the customer to read", async () => {
    const { quoteId, customer } = await sent();
    await trial.done(customer, askQuestion, { text: "Does it still fit under my carport?" });
    const [owed] = await waiting(quoteId);
    expect(owed?.sentence).toContain("“Does it still fit under my carport?” waits for an answer");
    await trial.done("desk", answerQuestion, { quoteId, text: "Yes: nothing gets higher." }, later(60_000));
    expect(await waiting(quoteId)).toEqual([]);
    const said = (messages: readonly { readonly text: string; readonly by: string | null }[]) =>
      messages.map(({ by, text }) => [by !== null, text]);
    const letter = await trial.done(customer, readLetter, {});
    const quote = await trial.done("desk", showQuote, { quoteId });
    expect(said(letter.messages)).toEqual([
      [false, "Does it still fit under my carport?"],
      [true, "Yes: nothing gets higher."],
    ]);
    expect(said(quote.messages)).toEqual(said(letter.messages));
  });

  test("is one of a dozen a day at most", async () => {
    const { customer } = await sent();
    for (let at = 1; at <= 12; at += 1) await trial.done(customer, askQuestion, { text: `Question ${at}` });
    const refusal = await trial.refused(customer, askQuestion, { text: "Question 13" });
    expect(refusal.code).toBe("asked-too-often");
    const tomorrow = later(25 * 3_600_000);
    await trial.done(customer, askQuestion, { text: "Question 13" }, tomorrow);
  });

  test("is answered by those who write quotes, where one was asked", async () => {
    const { quoteId, customer } = await sent();
    const answer = { quoteId, text: "Here is the answer." };
    expect((await trial.refused("desk", answerQuestion, answer)).code).toBe("nothing-asked");
    await trial.done(customer, askQuestion, { text: "And the tow bar?" });
    expect((await trial.refused("technician", answerQuestion, answer)).code).toBe("not-allowed");
    expect((await trial.refused("desk", askQuestion, { text: "Hello there" })).code).toBe("not-allowed");
    expect((await trial.refused("desk", answerQuestion, { ...answer, quoteId: newId() })).code).toBe(
      "quote-not-found",
    );
    expect((await trial.refused(customer, askQuestion, { text: "  " })).code).toBe("invalid-input");
  });

  test("stays as it was said", async () => {
    const { customer } = await sent();
    const { messageId } = await trial.done(customer, askQuestion, { text: "How long will it take?" });
    await expect(
      trial.sql("update quote_message set text = 'other' where id = $1", [messageId]),
    ).rejects.toThrow(/append_only/);
  });
});
