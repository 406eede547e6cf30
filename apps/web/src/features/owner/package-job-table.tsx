import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { shareText } from "./share-text";
import type { ShownPackage } from "./shown-margins";

/** The jobs of a package, what earned least first. */
export function PackageJobTable({
  jobs,
  currency,
  timeZone,
}: Pick<ShownPackage, "jobs" | "currency" | "timeZone">) {
  const sorted = jobs.toSorted(
    (one, other) => (one.actualMargin ?? 0) - (other.actualMargin ?? 0) || one.number - other.number,
  );
  return (
    <RuledTable
      caption="Jobs, what earned least first"
      isCaptionHidden
      columns={[
        { id: "job", title: "Job" },
        { id: "earnedShare", title: "Earned share", align: "figure" },
        { id: "quotedShare", title: "Quoted share", align: "figure" },
        { id: "earned", title: "Earned margin", align: "figure" },
        { id: "quoted", title: "Quoted margin", align: "figure" },
        { id: "sold", title: "Sold", align: "figure" },
        { id: "customer", title: "For" },
        { id: "vehicle", title: "Vehicle" },
        { id: "handedOver", title: "Handed over" },
      ]}
      rows={sorted.map((job) => ({
        id: job.jobId,
        cells: {
          job: (
            <Link href={`/owner/jobs/${job.jobId}`} className="whitespace-nowrap">
              Job {job.number}
            </Link>
          ),
          earnedShare: shareText(job.actualMargin),
          quotedShare: shareText(job.quotedMargin),
          earned: <Money minor={job.actualMarginMinor} currency={currency} />,
          quoted: <Money minor={job.quotedMarginMinor} currency={currency} />,
          sold: <Money minor={job.sellMinor} currency={currency} />,
          customer: job.customerName,
          vehicle: `${job.modelName}, ${job.plate}`,
          handedOver: job.handedOverAt && <Moment at={job.handedOverAt} timeZone={timeZone} form="day" />,
        },
      }))}
      empty={<EmptyState sentence="No job of it was handed over in this time." />}
    />
  );
}
