"use client";

import { ButtonLink } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { draftFromBuildAction } from "../quotes/actions";

interface QuoteThisProps {
  readonly buildId: string;
  readonly quote: { readonly id: string; readonly number: number } | null;
}

/** From the sheet to its quote. */
export function QuoteThis({ buildId, quote }: QuoteThisProps) {
  if (quote) {
    return (
      <ButtonLink href={`/quotes/${quote.id}`} variant="primary">
        Quote {quote.number}
      </ButtonLink>
    );
  }
  return (
    <ActionForm action={draftFromBuildAction} label="Quote this build">
      <input type="hidden" name="buildId" value={buildId} readOnly />
      <SubmitButton pendingLabel="Pricing">Quote this</SubmitButton>
    </ActionForm>
  );
}
