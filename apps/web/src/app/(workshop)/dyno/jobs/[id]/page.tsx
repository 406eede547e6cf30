import { LARGEST_LOG_BYTES, showJobDyno } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { DynoCautions } from "@/features/dyno/dyno-cautions";
import "@/features/dyno/dyno.css";
import { ImportForm } from "@/features/dyno/import-form";
import { LimitsSection } from "@/features/dyno/limits-section";
import { MeasuredChain } from "@/features/dyno/measured-chain";
import { PrintButton } from "@/features/dyno/print-button";
import { SessionOverlay } from "@/features/dyno/session-overlay";
import { SessionSection } from "@/features/dyno/session-section";
import { vehicleFactsRow } from "@/features/dyno/vehicle-facts-row";
import { VerdictSection } from "@/features/dyno/verdict-section";
import { dynoHref, figuresFrom, ViewChoice } from "@/features/dyno/view-choice";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Dyno" };

interface JobDynoProps {
  readonly params: Promise<{ id: string }>;
  readonly searchParams: Promise<{ figures?: string; session?: string }>;
}

export default async function JobDynoPage({ params, searchParams }: JobDynoProps) {
  const { id } = await params;
  const asked = await searchParams;
  const loaded = await load(showJobDyno, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const page = loaded.value;
  const { job, vehicle, baseline, steps, proof, timeZone, mayMeasure, promise } = page;
  const sessions = [baseline, ...steps, proof].filter((session) => session !== null);
  const mayImport = mayMeasure && page.kinds.length > 0;
  const path = `/dyno/jobs/${job.id}`;
  const figures = figuresFrom(asked.figures);
  return (
    <Page>
      <SheetHead
        title={`Dyno: ${vehicle.plate}, job ${job.number}`}
        lead={`${vehicle.model}, ${vehicle.engine}, for ${job.customer}. ${job.goal}`}
        actions={
          <>
            {mayImport && <ButtonLink href="#import">Import runs</ButtonLink>}
            <ButtonLink href={`/jobs/${job.id}`}>Job</ButtonLink>
            <PrintButton />
          </>
        }
        facts={[...vehicleFactsRow(vehicle), { label: "Status", value: job.statusWords }]}
      />
      <Columns>
        <Stack>
          <Section
            title="Power and torque"
            aside={<ViewChoice path={path} figures={figures} session={asked.session} />}
          >
            {sessions.length === 0 ? (
              <EmptyState sentence="Nothing is measured yet. The baseline comes before anything is ordered that cannot go back." />
            ) : (
              <SessionOverlay
                sessions={
                  asked.session
                    ? sessions
                    : sessions.filter(({ kind, id: each }) => kind !== "proof" || each === proof?.id)
                }
                only={asked.session}
                figures={figures}
                timeZone={timeZone}
                promise={promise}
              />
            )}
          </Section>
          <VerdictSection page={page} />
          <MeasuredChain jobId={job.id} />
          <LimitsSection session={sessions.at(-1) ?? null} watched={page.watched} />
        </Stack>
        <Stack>
          {sessions.length > 0 && (
            <Section title="Runs">
              {sessions.toReversed().map((session) => (
                <SessionSection
                  key={session.id}
                  session={session}
                  timeZone={timeZone}
                  mayMeasure={mayMeasure}
                  runsHref={dynoHref(path, figures, session.id)}
                />
              ))}
            </Section>
          )}
        </Stack>
      </Columns>
      {mayImport && (
        <div className="no-print">
          <Section title="Import runs" id="import">
            <DynoCautions />
            <ImportForm
              vehicleId={vehicle.id}
              jobId={job.id}
              proposal={page.proposal}
              kinds={page.kinds}
              limitBytes={LARGEST_LOG_BYTES}
            />
          </Section>
        </div>
      )}
    </Page>
  );
}
