import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { answerAction } from "./actions";
import { MessageThread } from "./message-thread";
import type { ShownQuote } from "./shown-quote";

/** What the customer asked on their page, and the place to answer it. */
export function QuestionsSection({ quote }: { readonly quote: ShownQuote }) {
  const { messages, shown, may } = quote;
  if (messages.length === 0) return null;
  return (
    <Section title="Questions from the customer">
      <MessageThread messages={messages} customer={shown.customer.name} timeZone={shown.site.timeZone} />
      {may.write && (
        <ActionForm action={answerAction} label="Answer the customer" resetOnSaved>
          <input type="hidden" name="quoteId" value={quote.id} readOnly />
          <TextField
            name="text"
            label="Your answer"
            lines={3}
            maxLength={2_000}
            help="The customer reads it behind the same link, with your name."
          />
          <SubmitButton variant="quiet" pendingLabel="Sending">
            Send the answer
          </SubmitButton>
        </ActionForm>
      )}
    </Section>
  );
}
