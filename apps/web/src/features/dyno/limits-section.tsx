import type { SessionView, WatchedLimit } from "@buildproof/workshop";
import { Condition } from "@/design/condition";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { limitSentence, withUnit } from "./limit-words";

interface LimitsSectionProps {
  /** The newest session: its limits, and the worst each channel came to. */
  readonly session: SessionView | null;
  readonly watched: readonly WatchedLimit[];
}

const columns = [
  { id: "channel", title: "Channel" },
  { id: "watch", title: "Watch", align: "figure" },
  { id: "stop", title: "Lift" },
  { id: "worst", title: "Worst measured", align: "figure" },
  { id: "grade", title: "Condition" },
] as const;

/** When the operator lifts, and how close the runs came to it. */
export function LimitsSection({ session, watched }: LimitsSectionProps) {
  const logged = (session?.readings ?? []).map(({ limit, reading }) => ({
    id: limit.channel,
    cells: {
      channel: limit.title,
      watch: withUnit(limit.watch, limit.unit, limit.decimals),
      stop: <span className="figure">{limitSentence(limit)}</span>,
      worst: reading
        ? `${figureText(reading.value, limit.decimals)} at ${figureText(reading.engineRpm)} rpm`
        : "not in the log, watched by the operator",
      grade: reading ? <Condition grade={reading.grade} /> : "",
    },
  }));
  const seen = watched.map(({ title, watch, stop }) => ({
    id: title,
    cells: {
      channel: title,
      watch,
      stop: <span className="figure">lift at {stop}</span>,
      worst: "watched by the operator",
      grade: "",
    },
  }));
  return (
    <Section title="Abort limits">
      <RuledTable
        caption="Abort limits during a run"
        isCaptionHidden
        columns={columns}
        rows={[...logged, ...seen]}
      />
      <p className="fine">
        Common practice of the trade; the maker’s limits and the procedure on the job card come before these.
        A run that went past a limit is never counted.
      </p>
    </Section>
  );
}
