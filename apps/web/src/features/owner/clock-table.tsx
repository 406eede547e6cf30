import { EmptyState } from "@/design/empty-state";
import { Figure } from "@/design/figure";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import type { ShownJob } from "./shown-margins";

/** The clock entries of a job, in order of time. */
export function ClockTable({ clock, currency, timeZone }: Pick<ShownJob, "clock" | "currency" | "timeZone">) {
  const hours = clock.reduce((sum, entry) => sum + (entry.hours ?? 0), 0);
  const cost = clock.reduce((sum, entry) => sum + (entry.costMinor ?? 0), 0);
  return (
    <RuledTable
      caption="Clock entries"
      isCaptionHidden
      columns={[
        { id: "operation", title: "Work" },
        { id: "hours", title: "Clocked", align: "figure" },
        { id: "cost", title: "Cost", align: "figure" },
        { id: "person", title: "Who" },
        { id: "from", title: "From" },
        { id: "to", title: "To" },
      ]}
      rows={clock.map((entry) => ({
        id: entry.id,
        cells: {
          operation: (
            <>
              {entry.kind === "dyno" ? `${entry.operation} (dyno)` : entry.operation}
              {entry.correctedBecause && (
                <span className="sentence-note">{`Corrected: ${entry.correctedBecause}`}</span>
              )}
            </>
          ),
          hours: entry.hours === null ? "running" : <Figure value={entry.hours} unit="h" decimals={2} />,
          cost:
            entry.costMinor === null ? (
              "when it stops"
            ) : (
              <Money minor={entry.costMinor} currency={currency} />
            ),
          person: entry.personName,
          from: <Moment at={entry.startedAt} timeZone={timeZone} />,
          to: entry.stoppedAt && <Moment at={entry.stoppedAt} timeZone={timeZone} form="time" />,
        },
      }))}
      total={{
        operation: "Together",
        hours: <Figure value={hours} unit="h" decimals={2} />,
        cost: <Money minor={cost} currency={currency} />,
      }}
      empty={<EmptyState sentence="Nobody has clocked on to this job." />}
    />
  );
}
