import { packageMargin } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { DotStrip } from "@/design/plots/dot-strip";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { kindPaths } from "@/features/owner/kind-words";
import { MarginWaterfall } from "@/features/owner/margin-waterfall";
import { PackageJobTable } from "@/features/owner/package-job-table";
import { PeriodChooser } from "@/features/owner/period-chooser";
import { over, periodAt, periodWords } from "@/features/owner/period-words";
import { PriceSentence } from "@/features/owner/price-sentence";
import { QuarterTable } from "@/features/owner/quarter-table";
import { middleHalfText, rateText, shareText } from "@/features/owner/share-text";
import type { ShownPackage } from "@/features/owner/shown-margins";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Margin of a package" };

interface PackagePageProps {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly period?: string | string[] }>;
}

export default async function PackagePage({ params, searchParams }: PackagePageProps) {
  const { code } = await params;
  const period = periodAt((await searchParams).period);
  const loaded = await load(packageMargin, { code, period });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const shown = loaded.value;
  const path = `/owner/packages/${code}`;
  return (
    <Page>
      <SheetHead
        title={shown.name}
        lead={
          <>
            <Link href={over("/owner", period)}>Margins</Link>: jobs handed over in {periodWords[period]},
            without tax. {shown.outcome}
          </>
        }
        actions={<PeriodChooser path={path} period={period} code={code} />}
        facts={factsOf(shown)}
      />
      {shown.jobs.length === 0 ? (
        <EmptyState sentence="No job of it was handed over in this time. Try a longer period." />
      ) : (
        <PackageFigures shown={shown} path={path} />
      )}
      {shown.stopped.length > 0 && (
        <p className="fine">
          Stopped before the work, and outside these figures:{" "}
          {shown.stopped.map(({ id, number }, index) => (
            <span key={id}>
              {index > 0 && ", "}
              <Link href={`/owner/jobs/${id}`}>job {number}</Link>
            </span>
          ))}
          .
        </p>
      )}
    </Page>
  );
}

function PackageFigures({ shown, path }: { readonly shown: ShownPackage; readonly path: string }) {
  const { earnings, currency, period, jobs } = shown;
  return (
    <>
      <Columns>
        <Stack>
          <Section title="From quoted to earned">
            <MarginWaterfall
              caption={`${earnings.jobs} ${earnings.jobs === 1 ? "job" : "jobs together"}; a step opens into the jobs behind it`}
              earnings={earnings}
              currency={currency}
              hrefOf={(kind) => over(`${path}/${kindPaths[kind]}`, period)}
            />
          </Section>
          <Section title="What it would have to sell at">
            <PriceSentence price={shown.price} earnings={earnings} currency={currency} />
          </Section>
        </Stack>
        <Stack>
          <Section title="Spread between jobs">
            <DotStrip
              caption="Earned margin of each job; arrow keys walk along, Enter opens the job"
              unit="% of the sell price"
              decimals={1}
              dots={jobs.flatMap(({ jobId, number, actualMargin }) =>
                actualMargin === null
                  ? []
                  : [
                      {
                        id: jobId,
                        label: `Job ${number}`,
                        value: actualMargin / 100,
                        href: `/owner/jobs/${jobId}`,
                      },
                    ],
              )}
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
          <Section title="Quarter by quarter">
            <QuarterTable quarters={shown.quarters} />
          </Section>
        </Stack>
      </Columns>
      <Section title="Jobs" aside={<span className="fine">what earned least first</span>}>
        <PackageJobTable jobs={jobs} currency={currency} timeZone={shown.timeZone} />
      </Section>
    </>
  );
}

function factsOf({ earnings, spread, quotes, cameBack, dynoHours, quotedDynoHours }: ShownPackage) {
  const perJob = (hours: number) => <Figure value={hours / earnings.jobs} unit="h" decimals={1} />;
  const decided = quotes.won + quotes.lost;
  return [
    { label: "Jobs", value: earnings.jobs },
    {
      label: "Quotes won",
      value: `${rateText(quotes.winRate)} of ${decided}${quotes.open > 0 ? `, ${quotes.open} open` : ""}`,
    },
    ...(earnings.jobs === 0
      ? []
      : [
          { label: "Quoted margin", value: shareText(earnings.quotedMargin) },
          { label: "Earned margin", value: shareText(earnings.actualMargin) },
          { label: "Median job", value: spread ? `${figureText(spread.median, 1)} %` : "–" },
          { label: "Middle half of jobs", value: middleHalfText(spread) },
          {
            label: "Came back",
            value: cameBack === 0 ? "none" : `${cameBack}, ${rateText(cameBack / earnings.jobs)}`,
          },
          ...(dynoHours > 0
            ? [
                {
                  label: "Dyno a job",
                  value: (
                    <>
                      {perJob(dynoHours)}, quoted {perJob(quotedDynoHours)}
                    </>
                  ),
                },
              ]
            : []),
        ]),
  ];
}
