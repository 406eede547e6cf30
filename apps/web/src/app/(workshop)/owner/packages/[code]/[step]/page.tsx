import { packageStep } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Money } from "@/design/money";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { kindAt, kindSources, kindWords } from "@/features/owner/kind-words";
import { OperationTable } from "@/features/owner/operation-table";
import { over, periodAt, periodWords } from "@/features/owner/period-words";
import { RecordedTable } from "@/features/owner/recorded-table";
import { StepJobTable } from "@/features/owner/step-job-table";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Behind a margin" };

interface StepPageProps {
  readonly params: Promise<{ readonly code: string; readonly step: string }>;
  readonly searchParams: Promise<{ readonly period?: string | string[] }>;
}

export default async function StepPage({ params, searchParams }: StepPageProps) {
  const { code, step: path } = await params;
  const period = periodAt((await searchParams).period);
  const kind = kindAt(path) ?? notFound();
  const loaded = await load(packageStep, { code, period, kind });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const step = loaded.value;
  const back = code === "all-work" ? "/owner" : `/owner/packages/${code}`;
  const { currency, timeZone } = step;
  return (
    <Page>
      <SheetHead
        title={`${kindWords[kind]}: ${step.name}`}
        lead={
          <>
            <Link href={over(back, period)}>{code === "all-work" ? "Margins" : step.name}</Link>: jobs handed
            over in {periodWords[period]}. {kindSources[kind]}
          </>
        }
        facts={[
          { label: "Jobs", value: step.jobs.length },
          { label: "Quoted cost", value: <Money minor={step.quotedMinor} currency={currency} /> },
          { label: "Actual cost", value: <Money minor={step.actualMinor} currency={currency} /> },
          {
            label: "Over",
            value: <Money minor={step.actualMinor - step.quotedMinor} currency={currency} signed />,
          },
        ]}
      />
      <Columns>
        <Section title="Jobs" aside={<span className="fine">each opens at its entries</span>}>
          <StepJobTable step={step} />
        </Section>
        <Stack>
          {kind === "labour" && (
            <Section title="By operation" aside={<span className="fine">over all these jobs</span>}>
              <OperationTable operations={step.operations} />
            </Section>
          )}
          {kind !== "labour" && step.recorded.length > 0 && (
            <Section title="As recorded" aside={<span className="fine">the largest first</span>}>
              <RecordedTable costs={step.recorded} currency={currency} timeZone={timeZone} withJobs />
            </Section>
          )}
        </Stack>
      </Columns>
    </Page>
  );
}
