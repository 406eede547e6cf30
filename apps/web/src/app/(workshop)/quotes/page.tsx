import { listQuotes, quoteStatuses } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Page, SheetHead } from "@/design/sheet";
import { addressOf, QuoteFilter, QuoteList } from "@/features/quotes/quote-list";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Quotes" };

interface QuotesPageProps {
  readonly searchParams: Promise<{ readonly q?: string; readonly status?: string; readonly page?: string }>;
}

export default async function QuotesPage({ searchParams }: QuotesPageProps) {
  const asked = await searchParams;
  const search = asked.q?.trim().slice(0, 100) ?? "";
  const status = quoteStatuses.find((known) => known === asked.status) ?? null;
  const page = /^[1-9]\d{0,3}$/.test(asked.page ?? "") ? Number(asked.page) : 1;
  const loaded = await load(listQuotes, { search, page, ...(status ? { status } : {}) });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { quotes, currency, hasMore } = loaded.value;
  return (
    <Page>
      <SheetHead title="Quotes" />
      <QuoteFilter search={search} status={status} />
      <QuoteList quotes={quotes} currency={currency} search={search} status={status} />
      {(page > 1 || hasMore) && (
        <nav aria-label="Pages of the list" className="flex gap-4">
          {page > 1 && <Link href={addressOf(status, search, page - 1)}>Newer quotes</Link>}
          {hasMore && <Link href={addressOf(status, search, page + 1)}>Older quotes</Link>}
        </nav>
      )}
    </Page>
  );
}
