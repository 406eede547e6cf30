import { marginsByPackage } from "@buildproof/workshop";
import type { Metadata } from "next";
import { EmptyState } from "@/design/empty-state";
import { figureText } from "@/design/figure-text";
import { Money } from "@/design/money";
import { DotStrip } from "@/design/plots/dot-strip";
import { Columns, Page, Section, SheetHead } from "@/design/sheet";
import { DynoSentence } from "@/features/owner/dyno-sentence";
import { HeldSection } from "@/features/owner/held-section";
import { kindPaths } from "@/features/owner/kind-words";
import { LostSection } from "@/features/owner/lost-section";
import { MarginWaterfall } from "@/features/owner/margin-waterfall";
import { PackageTable } from "@/features/owner/package-table";
import { PeriodChooser } from "@/features/owner/period-chooser";
import { over, periodAt, periodWords } from "@/features/owner/period-words";
import { middleHalfText, shareText } from "@/features/owner/share-text";
import type { ShownMargins } from "@/features/owner/shown-margins";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Margins" };

interface OwnerPageProps {
  readonly searchParams: Promise<{ readonly period?: string | string[] }>;
}

export default async function OwnerPage({ searchParams }: OwnerPageProps) {
  const period = periodAt((await searchParams).period);
  const loaded = await load(marginsByPackage, { period });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const margins = loaded.value;
  const { earnings } = margins.whole;
  return (
    <Page>
      <SheetHead
        title="Margins"
        lead={`Jobs handed over in ${periodWords[period]}, without tax.`}
        actions={<PeriodChooser path="/owner" period={period} code="all-work" />}
        facts={earnings.jobs > 0 ? factsOf(margins) : []}
      />
      {earnings.jobs === 0 ? (
        <EmptyState sentence="No job was handed over in this time. Margins appear with the first hand-over; try a longer period." />
      ) : (
        <Columns>
          <Section title="From quoted to earned">
            <MarginWaterfall
              caption={`${earnings.jobs} jobs together; a step opens into the jobs behind it`}
              earnings={earnings}
              currency={margins.currency}
              hrefOf={(kind) => over(`/owner/packages/all-work/${kindPaths[kind]}`, period)}
            />
          </Section>
          <Section title="Spread between jobs">
            <DotStrip
              caption="Earned margin of each job; arrow keys walk along, Enter opens the job"
              unit="% of the sell price"
              decimals={1}
              dots={margins.dots.map(({ jobId, number, packageName, value }) => ({
                id: jobId,
                label: `Job ${number}, ${packageName}`,
                value,
                href: `/owner/jobs/${jobId}`,
              }))}
              {...(earnings.quotedMargin === null
                ? {}
                : {
                    reference: {
                      label: `quoted ${shareText(earnings.quotedMargin)}`,
                      value: earnings.quotedMargin / 100,
                    },
                  })}
            />
          </Section>
        </Columns>
      )}
      <Section title="Packages" aside={<span className="fine">margins as a share of the sell price</span>}>
        <PackageTable packages={margins.packages} currency={margins.currency} period={period} />
        <DynoSentence packages={margins.packages} currency={margins.currency} />
        {margins.stopped > 0 && (
          <p className="fine">
            {`${margins.stopped} ${margins.stopped === 1 ? "job was" : "jobs were"} stopped before the work, most often by the inspection, and stand outside these figures.`}
          </p>
        )}
      </Section>
      <Columns>
        <HeldSection margins={margins} />
        <LostSection margins={margins} period={periodWords[period]} />
      </Columns>
    </Page>
  );
}

function factsOf({ whole, currency }: ShownMargins) {
  const { earnings, spread } = whole;
  return [
    { label: "Jobs", value: earnings.jobs },
    { label: "Sold", value: <Money minor={earnings.sellMinor} currency={currency} /> },
    { label: "Quoted margin", value: shareText(earnings.quotedMargin) },
    { label: "Earned margin", value: shareText(earnings.actualMargin) },
    { label: "Median job", value: spread ? `${figureText(spread.median, 1)} %` : "–" },
    { label: "Middle half of jobs", value: middleHalfText(spread) },
  ];
}
