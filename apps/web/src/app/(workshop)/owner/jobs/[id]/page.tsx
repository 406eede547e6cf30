import { jobMargin, recordedKinds } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { moneyText } from "@/design/money-text";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { ClockTable } from "@/features/owner/clock-table";
import { JobNotices } from "@/features/owner/job-notices";
import { KindTable } from "@/features/owner/kind-table";
import { kindPaths, kindWords } from "@/features/owner/kind-words";
import { LineCostTable } from "@/features/owner/line-cost-table";
import { MarginWaterfall } from "@/features/owner/margin-waterfall";
import { OperationTable } from "@/features/owner/operation-table";
import { RecordCostForm } from "@/features/owner/record-cost-form";
import { RecordedCosts } from "@/features/owner/recorded-costs";
import { shareText } from "@/features/owner/share-text";
import type { ShownJob } from "@/features/owner/shown-margins";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Margin of a job" };

export default async function JobMarginPage({
  params,
}: {
  readonly params: Promise<{ readonly id: string }>;
}) {
  const { id } = await params;
  const loaded = await load(jobMargin, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const job = loaded.value;
  const { currency, timeZone, earnings } = job;
  return (
    <Page>
      <SheetHead
        title={`Job ${job.number}: margin`}
        lead={
          <>
            <Link href={`/owner/packages/${job.packageCode}`}>{job.packageName ?? "Single work"}</Link> for{" "}
            {job.customerName}; {job.modelName}, {job.plate}.{" "}
            <Link href={`/jobs/${job.jobId}`}>Open the job</Link>
          </>
        }
        facts={factsOf(job)}
      />
      <JobNotices job={job} />
      <Columns>
        <Section title="From quoted to earned">
          <MarginWaterfall
            caption="A step leads to the entries behind it, further down"
            earnings={earnings}
            currency={currency}
            hrefOf={(kind) => `#${kindPaths[kind]}`}
            endLabel={job.ending === "handed-over" ? "Earned margin" : "Margin so far"}
          />
        </Section>
        <Section title="Cost by kind">
          <KindTable earnings={earnings} currency={currency} />
        </Section>
      </Columns>
      <Columns>
        <Section
          id={kindPaths.labour}
          title="Labour: clock entries"
          aside={
            <span className="fine">
              at {moneyText(job.labourCostMinorPerHour, currency)} an hour, each rounded to the cent
            </span>
          }
        >
          <ClockTable clock={job.clock} currency={currency} timeZone={timeZone} />
        </Section>
        <Section title="Hours by operation">
          <OperationTable operations={job.operations} />
        </Section>
      </Columns>
      <Columns>
        <RecordedCosts job={job} />
        <Section title="Record a cost">
          <RecordCostForm
            jobId={job.jobId}
            kinds={recordedKinds.map((kind) => ({ id: kind, label: kindWords[kind] }))}
            today={job.today}
            currency={currency}
          />
        </Section>
      </Columns>
      <Stack>
        <Section title="Quoted: lines of the accepted version">
          <LineCostTable lines={job.lines} currency={currency} />
        </Section>
      </Stack>
    </Page>
  );
}

function factsOf(job: ShownJob) {
  const { earnings, currency, handedOverAt, timeZone } = job;
  return [
    { label: "Status", value: job.statusWords },
    ...(handedOverAt
      ? [{ label: "Handed over", value: <Moment at={handedOverAt} timeZone={timeZone} form="day" /> }]
      : []),
    { label: "Sold, without tax", value: <Money minor={earnings.sellMinor} currency={currency} /> },
    {
      label: "Quoted margin",
      value: (
        <>
          <Money minor={earnings.quotedMarginMinor} currency={currency} />, {shareText(earnings.quotedMargin)}
        </>
      ),
    },
    {
      label: job.ending === "handed-over" ? "Earned margin" : "Margin so far",
      value: (
        <>
          <Money minor={earnings.actualMarginMinor} currency={currency} />, {shareText(earnings.actualMargin)}
        </>
      ),
    },
  ];
}
