import type { SessionView, WatchedLimit } from "@buildproof/workshop";
import { Condition } from "@/design/condition";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { fromWords, liftWords, withUnit } from "./limit-words";

interface LimitsSectionProps {
  /** The newest session: its limits, and the worst each channel came to. */
  readonly session: SessionView | null;
  readonly watched: readonly WatchedLimit[];
}

const columns = [
  { id: "channel", title: "Channel" },
  { id: "watch", title: "Watch", align: "figure" },
  { id: "stop", title: "Lift" },
  { id: "worst", title: "Worst measured" },
] as const;

/** When the operator lifts, and how close the runs came to it. */
export function LimitsSection({ session, watched }: LimitsSectionProps) {
  const logged = (session?.readings ?? []).map(({ limit, reading }) => ({
    id: limit.channel,
    cells: {
      channel: limit.title,
      watch: withUnit(limit.watch, limit.unit, limit.decimals),
      stop: <Noted figure={liftWords(limit)} note={fromWords(limit)} />,
      worst: reading ? (
        <>
          <Condition grade={reading.grade} />{" "}
          <Noted
            figure={withUnit(reading.value, limit.unit, limit.decimals)}
            note={`at ${figureText(reading.engineRpm)} rpm`}
          />
        </>
      ) : (
        "not in the log, watched by the operator"
      ),
    },
  }));
  const seen = watched.map(({ title, watch, stop }) => ({
    id: title,
    cells: { channel: title, watch, stop, worst: "watched by the operator" },
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

/** Two short lines instead of a long one: the table stays within a tablet's width. */
function Noted({ figure, note }: { readonly figure: string; readonly note: string }) {
  return (
    <>
      <span className="figure">{figure}</span>
      {note && <span className="sentence-note">{note}</span>}
    </>
  );
}
