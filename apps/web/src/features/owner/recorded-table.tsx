import type { RecordedCost } from "@buildproof/workshop";
import Link from "next/link";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { LeftOut, mostShown } from "./most-shown";

interface RecordedTableProps {
  readonly costs: readonly RecordedCost[];
  readonly currency: string;
  readonly timeZone: string;
  /** Names the job of each: where the costs are of several. */
  readonly withJobs?: boolean;
}

/** Costs as they were recorded, the largest first. */
export function RecordedTable({ costs, currency, timeZone, withJobs = false }: RecordedTableProps) {
  const total = costs.reduce((sum, cost) => sum + cost.amountMinor, 0);
  return (
    <>
      <RuledTable
        caption="Recorded costs"
        isCaptionHidden
        columns={[
          { id: "what", title: "What" },
          { id: "amount", title: "Amount", align: "figure" },
          ...(withJobs ? [{ id: "job", title: "Job" }] : []),
          { id: "on", title: "Dated" },
        ]}
        rows={costs.slice(0, mostShown).map((cost) => ({
          id: cost.id,
          cells: {
            what: cost.description,
            amount: <Money minor={cost.amountMinor} currency={currency} />,
            job: (
              <Link href={`/owner/jobs/${cost.jobId}`} className="whitespace-nowrap">
                Job {cost.jobNumber}
              </Link>
            ),
            on: <Moment at={cost.at} timeZone={timeZone} form="day" />,
          },
        }))}
        {...(costs.length > 1
          ? { total: { what: "Together", amount: <Money minor={total} currency={currency} /> } }
          : {})}
      />
      <LeftOut of={costs.length} which="largest" />
    </>
  );
}
