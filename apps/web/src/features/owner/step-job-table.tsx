import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Figure } from "@/design/figure";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { kindPaths } from "./kind-words";
import { LeftOut, mostShown } from "./most-shown";
import type { ShownStep } from "./shown-margins";

/** The jobs behind a step, what ran over furthest first; each opens at the entries it is made of. */
export function StepJobTable({ step }: { readonly step: ShownStep }) {
  const { jobs, kind, currency, quotedMinor, actualMinor } = step;
  const isHours = kind === "labour" || kind === "dyno";
  return (
    <>
      <RuledTable
        caption="Jobs, what ran over furthest first"
        isCaptionHidden
        columns={[
          { id: "job", title: "Job" },
          { id: "over", title: "Over", align: "figure" },
          { id: "quoted", title: "Quoted cost", align: "figure" },
          { id: "actual", title: "Actual cost", align: "figure" },
          ...(isHours
            ? ([
                { id: "quotedHours", title: "Quoted", align: "figure" },
                { id: "actualHours", title: kind === "labour" ? "Clocked" : "Charged", align: "figure" },
              ] as const)
            : []),
          { id: "customer", title: "For" },
        ]}
        rows={jobs.slice(0, mostShown).map((job) => ({
          id: job.jobId,
          cells: {
            job: (
              <Link href={`/owner/jobs/${job.jobId}#${kindPaths[kind]}`} className="whitespace-nowrap">
                Job {job.number}
              </Link>
            ),
            over: <Money minor={job.overMinor} currency={currency} signed />,
            quoted: <Money minor={job.quotedMinor} currency={currency} />,
            actual: <Money minor={job.actualMinor} currency={currency} />,
            quotedHours: job.hours && <Figure value={job.hours.quotedHours} unit="h" decimals={1} />,
            actualHours: job.hours && <Figure value={job.hours.actualHours} unit="h" decimals={1} />,
            customer: `${job.customerName}, ${job.plate}`,
          },
        }))}
        total={{
          job: `${jobs.length} ${jobs.length === 1 ? "job" : "jobs"}`,
          over: <Money minor={actualMinor - quotedMinor} currency={currency} signed />,
          quoted: <Money minor={quotedMinor} currency={currency} />,
          actual: <Money minor={actualMinor} currency={currency} />,
        }}
        empty={
          <EmptyState sentence="No job handed over in this time was quoted for it or cost anything of it." />
        }
      />
      <LeftOut of={jobs.length} which="that ran over furthest" />
    </>
  );
}
