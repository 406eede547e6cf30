import { showJobDyno } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Page, SheetHead } from "@/design/sheet";
import { askedView, type DynoSearch } from "@/features/dyno/asked-view";
import "@/features/dyno/dyno.css";
import { DynoSheet } from "@/features/dyno/dyno-sheet";
import { MeasuredChain } from "@/features/dyno/measured-chain";
import { PrintButton } from "@/features/dyno/print-button";
import { vehicleFactsRow } from "@/features/dyno/vehicle-facts-row";
import { VerdictSection } from "@/features/dyno/verdict-section";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Dyno" };

interface JobDynoProps {
  readonly params: Promise<{ id: string }>;
  readonly searchParams: Promise<DynoSearch>;
}

export default async function JobDynoPage({ params, searchParams }: JobDynoProps) {
  const { id } = await params;
  const view = askedView(await searchParams);
  const loaded = await load(showJobDyno, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const page = loaded.value;
  const { job, vehicle, baseline, steps, proof, mayMeasure, kinds, proposal } = page;
  const mayImport = mayMeasure && kinds.length > 0;
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
      <DynoSheet
        {...page}
        path={`/dyno/jobs/${job.id}`}
        view={view}
        own={[baseline, ...steps, proof].filter((session) => session !== null)}
        ifNone="Nothing is measured yet. The baseline comes before anything is ordered that cannot go back."
        importing={mayImport ? { title: "Import runs", jobId: job.id, proposal, kinds } : null}
      >
        <VerdictSection page={page} />
        <MeasuredChain jobId={job.id} />
      </DynoSheet>
    </Page>
  );
}
