import { showVehicleDyno } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { Page, SheetHead } from "@/design/sheet";
import { askedView, type DynoSearch } from "@/features/dyno/asked-view";
import "@/features/dyno/dyno.css";
import { DynoSheet } from "@/features/dyno/dyno-sheet";
import { PrintButton } from "@/features/dyno/print-button";
import { vehicleFactsRow } from "@/features/dyno/vehicle-facts-row";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Dyno" };

interface VehicleDynoProps {
  readonly params: Promise<{ id: string }>;
  readonly searchParams: Promise<DynoSearch>;
}

export default async function VehicleDynoPage({ params, searchParams }: VehicleDynoProps) {
  const { id } = await params;
  const view = askedView(await searchParams);
  const loaded = await load(showVehicleDyno, { vehicleId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const page = loaded.value;
  const { vehicle, sessions, mayMeasure, jobs, baseline, proposal } = page;
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
      <DynoSheet
        {...page}
        path={`/dyno/vehicles/${vehicle.id}`}
        view={view}
        own={sessions}
        ifNone="This vehicle was never on the dyno. The baseline comes before anything is ordered that cannot go back."
        importing={mayMeasure ? { title: "Import a baseline", proposal, kinds: ["baseline"] } : null}
      />
    </Page>
  );
}
