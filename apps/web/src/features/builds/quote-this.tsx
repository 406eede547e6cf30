"use client";

import { ButtonLink } from "@/design/button";

interface QuoteThisProps {
  readonly buildId: string;
  readonly quote: { readonly id: string; readonly number: number } | null;
}

/** The way from the sheet to its quote. */
export function QuoteThis({ buildId, quote }: QuoteThisProps) {
  return (
    <>
      {quote && <ButtonLink href={`/quotes/${quote.id}`}>Quote {quote.number}</ButtonLink>}
      <ButtonLink href={`/quotes/new?build=${buildId}`} variant="primary">
        Quote this
      </ButtonLink>
    </>
  );
}
