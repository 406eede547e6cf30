import type { QuoteStatus } from "@buildproof/workshop";
import Link from "next/link";
import { Button } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { TextField } from "@/design/text-field";
import { statusInWords, statusNames } from "./status-words";

interface ListedQuote {
  readonly id: string;
  readonly number: number;
  readonly customer: string;
  readonly vehicle: string;
  readonly plate: string;
  readonly versionNo: number;
  readonly status: QuoteStatus;
  readonly validUntil: string;
  readonly grossMinor: number;
  readonly draftNo: number | null;
  /** In the customer's words; empty where they said nothing. */
  readonly declinedBecause: string;
}

interface QuoteListProps {
  readonly quotes: readonly ListedQuote[];
  readonly currency: string;
  readonly search: string;
  readonly status: QuoteStatus | null;
}

/** Quotes, newest first: for whom, of which vehicle, where each stands in words. In rows where there is room. */
export function QuoteList({ quotes, currency, search, status }: QuoteListProps) {
  if (quotes.length === 0) return <NoQuotes isFiltered={search !== "" || status !== null} />;
  return (
    <>
      <div className="max-sm:hidden">
        <QuoteRows quotes={quotes} currency={currency} />
      </div>
      <ul className="sentences sm:hidden" aria-label="Quotes">
        {quotes.map((quote) => (
          <li key={quote.id} className="sentence">
            <div>
              <Link href={`/quotes/${quote.id}`}>
                {quote.number} for {quote.customer}
              </Link>
              <span className="sentence-note">
                {quote.vehicle}, {quote.plate}
                <br />
                {stateOf(quote)}
              </span>
            </div>
            <Money minor={quote.grossMinor} currency={currency} />
          </li>
        ))}
      </ul>
    </>
  );
}

function QuoteRows({ quotes, currency }: Pick<QuoteListProps, "quotes" | "currency">) {
  return (
    <RuledTable
      caption="Quotes"
      isCaptionHidden
      columns={[
        { id: "number", title: "Quote" },
        { id: "customer", title: "For" },
        { id: "vehicle", title: "Vehicle" },
        { id: "state", title: "Where it stands" },
        { id: "total", title: "Total with tax", align: "figure" },
      ]}
      rows={quotes.map((quote) => ({
        id: quote.id,
        cells: {
          number: <Link href={`/quotes/${quote.id}`}>{quote.number}</Link>,
          customer: quote.customer,
          vehicle: `${quote.vehicle}, ${quote.plate}`,
          state: stateOf(quote),
          total: <Money minor={quote.grossMinor} currency={currency} />,
        },
      }))}
    />
  );
}

function NoQuotes({ isFiltered }: { readonly isFiltered: boolean }) {
  return isFiltered ? (
    <EmptyState
      sentence="No quote is like that. Clear the search, or look at all of them."
      action={<Link href="/quotes">All quotes</Link>}
    />
  ) : (
    <EmptyState
      sentence="There are no quotes yet. Open a build and quote it."
      action={<Link href="/builds">To the builds</Link>}
    />
  );
}

function stateOf(quote: ListedQuote): string {
  const version = quote.versionNo > 1 ? `version ${quote.versionNo} ` : "";
  const draft = quote.draftNo === null ? "" : `; version ${quote.draftNo} in draft`;
  const because = quote.declinedBecause ? `: “${quote.declinedBecause}”` : "";
  return `${version}${statusInWords(quote)}${because}${draft}`;
}

const choices: readonly { readonly status: QuoteStatus | null; readonly title: string }[] = [
  { status: null, title: "all" },
  { status: "draft", title: statusNames.draft },
  { status: "issued", title: statusNames.issued },
  { status: "accepted", title: statusNames.accepted },
  { status: "declined", title: statusNames.declined },
  { status: "lapsed", title: statusNames.lapsed },
];

/** Search, and the statuses in words. Both are in the address, so that a list can be kept and sent. */
export function QuoteFilter({ search, status }: Pick<QuoteListProps, "search" | "status">) {
  return (
    <div className="grid gap-3">
      <search>
        <form action="/quotes" className="flex flex-wrap items-end gap-3">
          <div className="min-w-56 flex-1 sm:max-w-96">
            <TextField
              name="q"
              label="Find a quote"
              help="Number, customer, vehicle or plate"
              type="search"
              defaultValue={search}
            />
          </div>
          {status && <input type="hidden" name="status" value={status} />}
          <div className="self-start pt-6">
            <Button type="submit">Find</Button>
          </div>
        </form>
      </search>
      <nav aria-label="Quotes by status" className="flex flex-wrap gap-x-4 gap-y-1">
        <span className="text-ink-soft">Show:</span>
        {choices.map((choice) => (
          <Link
            key={choice.title}
            href={addressOf(choice.status, search)}
            aria-current={choice.status === status ? "true" : undefined}
            className="aria-[current]:font-bold aria-[current]:text-ink aria-[current]:no-underline"
          >
            {choice.title}
          </Link>
        ))}
      </nav>
    </div>
  );
}

/** The list's address for a status, a search and a page. */
export function addressOf(status: QuoteStatus | null, search: string, page = 1): string {
  const query = new URLSearchParams();
  if (search) query.set("q", search);
  if (status) query.set("status", status);
  if (page > 1) query.set("page", String(page));
  return query.size > 0 ? `/quotes?${query}` : "/quotes";
}
