import { LARGEST_LOG_BYTES, showVehicleDyno } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { DynoCautions } from "@/features/dyno/dyno-cautions";
import "@/features/dyno/dyno.css";
import { ImportForm } from "@/features/dyno/import-form";
import { LimitsSection } from "@/features/dyno/limits-section";
import { PrintButton } from "@/features/dyno/print-button";
import { SessionOverlay } from "@/features/dyno/session-overlay";
import { SessionSection } from "@/features/dyno/session-section";
import { vehicleFactsRow } from "@/features/dyno/vehicle-facts-row";
import { dynoHref, figuresFrom, ViewChoice } from "@/features/dyno/view-choice";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Dyno" };

interface VehicleDynoProps {
  readonly params: Promise<{ id: string }>;
  readonly searchParams: Promise<{ figures?: string; session?: string }>;
}

export default async function VehicleDynoPage({ params, searchParams }: VehicleDynoProps) {
  const { id } = await params;
  const asked = await searchParams;
  const loaded = await load(showVehicleDyno, { vehicleId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { vehicle, sessions, timeZone, mayMeasure, jobs, baseline, proposal, watched } = loaded.value;
  const path = `/dyno/vehicles/${vehicle.id}`;
  const figures = figuresFrom(asked.figures);
  return (
    <Page>
      <SheetHead
        title={`Dyno: ${vehicle.plate}`}
        lead={`${vehicle.model}, ${vehicle.engine}`}
        actions={
          <>
            {mayMeasure && <ButtonLink href="#import">Import a baseline</ButtonLink>}
            <ButtonLink href={`/vehicles/${vehicle.id}`}>Vehicle</ButtonLink>
            <PrintButton />
          </>
        }
        facts={vehicleFactsRow(vehicle)}
      />
      <p className="dyno-verdict" data-outcome={baseline.passed ? "kept" : "notDemonstrated"}>
        {baseline.sentence}
      </p>
      {jobs.length > 0 && (
        <p className="no-print">
          Steps and proofs are imported at the job:{" "}
          {jobs.map(({ id: jobId, number }, index) => (
            <span key={jobId}>
              {index > 0 && ", "}
              <Link href={`/dyno/jobs/${jobId}`}>job {number}</Link>
            </span>
          ))}
          .
        </p>
      )}
      {sessions.length === 0 ? (
        <EmptyState sentence="This vehicle was never on the dyno. The baseline comes before anything is ordered that cannot go back." />
      ) : (
        <Columns>
          <Stack>
            <Section
              title="Power and torque"
              aside={<ViewChoice path={path} figures={figures} session={asked.session} />}
            >
              <SessionOverlay
                sessions={sessions}
                only={asked.session}
                figures={figures}
                timeZone={timeZone}
              />
            </Section>
            <LimitsSection session={sessions.at(-1) ?? null} watched={watched} />
          </Stack>
          <Stack>
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
          </Stack>
        </Columns>
      )}
      {mayMeasure && (
        <div className="no-print">
          <Section title="Import a baseline" id="import">
            <DynoCautions />
            <ImportForm
              vehicleId={vehicle.id}
              proposal={proposal}
              kinds={["baseline"]}
              limitBytes={LARGEST_LOG_BYTES}
            />
          </Section>
        </div>
      )}
    </Page>
  );
}
