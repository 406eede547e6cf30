import { compareVersions, showQuote } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { ButtonLink } from "@/design/button";
import { Page, Section, SheetHead } from "@/design/sheet";
import { VersionChain } from "@/features/builds/version-chain";
import { ForecastOnRecord } from "@/features/engineering/forecast-on-record";
import { InvoicesSection } from "@/features/invoices/invoices-section";
import { DifferenceTable } from "@/features/quotes/difference-table";
import { AddLine } from "@/features/quotes/line-dialogs";
import { LineTable } from "@/features/quotes/line-table";
import { LinksSection } from "@/features/quotes/links-section";
import { MarginPanel } from "@/features/quotes/margin-panel";
import { MoneyPanel } from "@/features/quotes/money-panel";
import { NextStep } from "@/features/quotes/next-step";
import { QuestionsSection } from "@/features/quotes/questions-section";
import { QuoteSays } from "@/features/quotes/quote-says";
import type { ShownQuote } from "@/features/quotes/shown-quote";
import { statusInWords } from "@/features/quotes/status-words";
import { TermsDialog } from "@/features/quotes/terms-dialog";
import { VersionList } from "@/features/quotes/version-list";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Quote" };

interface QuotePageProps {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly version?: string }>;
}

export default async function QuotePage({ params, searchParams }: QuotePageProps) {
  const { id } = await params;
  const { version } = await searchParams;
  if (!/^[0-9a-f-]{36}$/i.test(id)) notFound();
  const versionNo = /^[1-9]\d{0,3}$/.test(version ?? "") ? { versionNo: Number(version) } : {};
  const loaded = await load(showQuote, { quoteId: id, ...versionNo });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const quote = loaded.value;
  const { shown } = quote;
  const before = shown.versionNo - 1;
  const compared =
    before > 0 ? await load(compareVersions, { quoteId: id, from: before, to: shown.versionNo }) : null;
  return (
    <Page>
      <QuoteHead quote={quote} />
      <div className="page-columns">
        <div className="grid content-start gap-8">
          <Lines quote={quote} />
          <VersionChain sold={{ versionId: shown.id }} />
          {compared?.ok && <DifferenceTable difference={compared.value} />}
          <QuoteSays shown={shown} />
          <ForecastOnRecord forecast={shown.forecast} timeZone={shown.site.timeZone} />
        </div>
        {/* Where there is one column, what is to be done comes before what is to be read. */}
        <div className="grid content-start gap-8 max-lg:order-first">
          <NextStep quote={quote} />
          <QuestionsSection quote={quote} />
          <LinksSection quote={quote} />
          <MoneyPanel quote={quote} />
          <InvoicesSection quote={quote} />
          <VersionList quote={quote} />
          {quote.margin && <MarginPanel margin={quote.margin} currency={shown.currency} />}
        </div>
      </div>
    </Page>
  );
}

function QuoteHead({ quote }: { readonly quote: ShownQuote }) {
  const { shown } = quote;
  return (
    <SheetHead
      title={`Quote ${quote.number}, version ${shown.versionNo}`}
      lead={statusInWords(shown)}
      actions={
        <ButtonLink href={`/api/quotes/${shown.id}/pdf`} prefetch={false} target="_blank">
          PDF
        </ButtonLink>
      }
      facts={[
        { label: "For", value: <Link href={`/customers/${quote.customerId}`}>{shown.customer.name}</Link> },
        {
          label: "Vehicle",
          value: (
            <Link href={`/vehicles/${quote.vehicleId}`}>
              {shown.vehicle.description}, {shown.vehicle.plate}
            </Link>
          ),
        },
        { label: "Build", value: <Link href={`/builds/${quote.build.id}`}>{quote.build.number}</Link> },
        { label: "Workshop hours", value: shown.hours.labour },
        ...(shown.hours.saved === "0"
          ? []
          : [{ label: "Shared work saved", value: `${shown.hours.saved} h` }]),
        ...(shown.hours.dyno === "0" ? [] : [{ label: "Dyno hours", value: shown.hours.dyno }]),
      ]}
    />
  );
}

function Lines({ quote }: { readonly quote: ShownQuote }) {
  const { shown, may } = quote;
  const { currency, site } = shown;
  const discountHelp = may.anyDiscount
    ? "As you decide."
    : `Up to ${site.discountLimitPct} %; more is the owner's to give.`;
  const seen = { versionId: shown.id, revision: shown.revision };
  const isOpen = shown.status === "draft" && may.write;
  return (
    <Section
      title="Lines"
      aside={
        isOpen && (
          <div className="form-actions">
            <TermsDialog
              {...seen}
              validUntil={shown.validUntil}
              note={shown.note}
              discount={shown.discountTyped}
              discountHelp={discountHelp}
              currency={currency}
              taxName={site.taxName}
              today={quote.today}
            />
            <AddLine
              {...seen}
              currency={currency}
              taxName={site.taxName}
              discountHelp={discountHelp}
              seesCost={may.seeCost}
            />
          </div>
        )
      }
    >
      <LineTable
        lines={shown.lines}
        currency={currency}
        taxName={site.taxName}
        totals={shown.totals}
        draft={isOpen ? { ...seen, discountHelp } : null}
        costOf={quote.margin?.costOf ?? null}
      />
    </Section>
  );
}
