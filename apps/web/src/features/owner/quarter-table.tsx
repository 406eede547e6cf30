import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { middleHalfText, shareText } from "./share-text";
import type { ShownPackage } from "./shown-margins";

/** How the margin moved from quarter to quarter. */
export function QuarterTable({ quarters }: Pick<ShownPackage, "quarters">) {
  return (
    <RuledTable
      caption="Margin by quarter of the hand-over"
      isCaptionHidden
      columns={[
        { id: "quarter", title: "Quarter" },
        { id: "jobs", title: "Jobs", align: "figure" },
        { id: "quoted", title: "Quoted", align: "figure" },
        { id: "median", title: "Median job", align: "figure" },
        { id: "half", title: "Middle half", align: "figure" },
      ]}
      rows={quarters.map(({ quarter, jobs, spread, quotedMargin }) => ({
        id: quarter,
        cells: {
          quarter,
          jobs,
          quoted: shareText(quotedMargin),
          median: spread ? `${figureText(spread.median, 1)} %` : "–",
          half: middleHalfText(spread),
        },
      }))}
    />
  );
}
