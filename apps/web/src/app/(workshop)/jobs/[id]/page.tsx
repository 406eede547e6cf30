import { readJob } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { ClockEntryList } from "@/features/floor/clock-entry-list";
import { finishWorkAction } from "@/features/jobs/actions";
import { BookingsSection } from "@/features/jobs/bookings-section";
import { GateSection } from "@/features/jobs/gate-section";
import { GoodsSection } from "@/features/jobs/goods-section";
import {
  FaultsSection,
  JobObligations,
  MoneySection,
  ProgressSection,
  Timeline,
} from "@/features/jobs/job-side";
import { StopJob } from "@/features/jobs/stop-job";
import { StoppedNotice } from "@/features/jobs/stopped-notice";
import { localText } from "@/features/plan/local-text";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Job" };

export default async function JobPage({ params }: { readonly params: Promise<{ id: string }> }) {
  const { id } = await params;
  const loaded = await load(readJob, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const job = loaded.value;
  const { vehicle, quote, timeZone, may, isOver } = job;
  const quoteHref = `/quotes/${quote.id}`;
  return (
    <Page>
      <SheetHead
        title={`Job ${job.number}: ${vehicle.plate}`}
        lead={`${vehicle.model} for ${job.customer.name}. ${quote.goal}`}
        actions={
          <>
            <ButtonLink href={`/jobs/${job.id}/card`}>Job card</ButtonLink>
            <ButtonLink href={`/dyno/jobs/${job.id}`}>Dyno</ButtonLink>
            <ButtonLink href={`/jobs/${job.id}/hand-over`}>Hand-over</ButtonLink>
            {may.finish && (
              <ActionForm action={finishWorkAction} label="Declare the work done">
                <input type="hidden" name="jobId" value={job.id} readOnly />
                <SubmitButton variant="quiet" pendingLabel="Looking">
                  Work is done
                </SubmitButton>
              </ActionForm>
            )}
            {may.stop && <StopJob jobId={job.id} />}
          </>
        }
        facts={[
          { label: "Status", value: job.statusWords },
          { label: "Vehicle", value: <Link href={`/vehicles/${vehicle.id}`}>{vehicle.vin}</Link> },
          { label: "Odometer", value: `${vehicle.odometerKm.toLocaleString("en-AU")} km` },
          { label: "Package", value: job.packageName ?? "chosen item by item" },
          {
            label: "Accepted",
            value: (
              <>
                {may.readQuote ? (
                  <Link href={quoteHref}>{`Quote ${quote.number} version ${quote.versionNo}`}</Link>
                ) : (
                  `Quote ${quote.number} version ${quote.versionNo}`
                )}
                {quote.acceptedAt && (
                  <>
                    {", "}
                    <Moment at={quote.acceptedAt} timeZone={timeZone} form="day" />
                  </>
                )}
              </>
            ),
          },
          { label: "Quoted", value: `${quote.labourHours} h labour, ${quote.dynoHours} h dyno` },
        ]}
      />
      {job.stopped && (
        <StoppedNotice jobId={job.id} stopped={job.stopped} timeZone={timeZone} mayResume={may.resume} />
      )}
      <Columns>
        <Stack>
          {!isOver && (
            <GateSection
              points={job.gate}
              hrefs={{
                build: `/builds/${job.buildId}`,
                dyno: `/dyno/vehicles/${vehicle.id}`,
                quote: quoteHref,
                job: `/jobs/${job.id}`,
                "hand-over": `/jobs/${job.id}/hand-over`,
              }}
            />
          )}
          <BookingsSection
            job={{
              id: job.id,
              label: `Job ${job.number}`,
              points: job.gate.filter(
                ({ met, overridden, point }) => !met && !overridden && point !== "resources",
              ),
              work: job.work,
            }}
            bookings={job.bookings}
            resources={job.resources}
            timeZone={timeZone}
            today={localText(job.now, timeZone).slice(0, 10)}
            mayBook={may.book}
          />
          <GoodsSection
            jobId={job.id}
            kit={job.kit}
            counts={job.goodsIn}
            timeZone={timeZone}
            mayCount={may.count}
          />
        </Stack>
        <Stack>
          <MoneySection
            money={job.money}
            payments={job.payments}
            quoteHref={may.readQuote ? quoteHref : null}
          />
          <FaultsSection faults={job.faults} timeZone={timeZone} maySettle={may.settleFaults} />
          <JobObligations obligations={job.obligations} href={`/jobs/${job.id}/hand-over`} />
          <ProgressSection progress={job.progress} total={job.steps} />
          <Section title="Clock">
            <ClockEntryList
              entries={job.clock}
              timeZone={timeZone}
              by="person"
              empty="Nobody has clocked on to this job."
            />
          </Section>
          <Timeline entries={job.timeline} timeZone={timeZone} />
        </Stack>
      </Columns>
    </Page>
  );
}
