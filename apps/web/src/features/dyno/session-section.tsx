import type { SessionView } from "@buildproof/workshop";
import Link from "next/link";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { CorrectionSection } from "./correction-details";
import { RepeatabilitySection } from "./repeatability-section";
import { RunForms } from "./run-forms";
import { conditionsText, correctionText, sessionTitle, spreadText } from "./session-words";

interface SessionSectionProps {
  readonly session: SessionView;
  readonly timeZone: string;
  readonly mayMeasure: boolean;
  /** Where its runs can be seen over one another. */
  readonly runsHref: string;
}

const columns = [
  { id: "run", title: "Run" },
  { id: "power", title: "Power", align: "figure" },
  { id: "observed", title: "observed", align: "figure" },
  { id: "torque", title: "Torque", align: "figure" },
  { id: "counts", title: "Counts" },
] as const;

/** The runs of one set-up: what each made, which of them count, and how their correction came about. */
export function SessionSection({ session, timeZone, mayMeasure, runsHref }: SessionSectionProps) {
  const { runs, figures } = session;
  return (
    <div className="dyno-session">
      <RuledTable
        caption={sessionTitle(session, timeZone)}
        columns={columns}
        rows={runs.map((run) => ({
          id: run.id,
          cells: {
            run: figureText(run.number),
            power: <Figure value={run.peakKw} unit="kW" decimals={1} />,
            observed: <Figure value={run.observedPeakKw} unit="kW" decimals={1} />,
            torque: <Figure value={run.peakNm} unit="N·m" />,
            counts: run.excludedBecause === null ? "yes" : <span>no: {run.excludedBecause}</span>,
          },
        }))}
        total={{
          run: "Mean",
          power: figures.peakPower ? <Figure value={figures.peakPower.value} unit="kW" decimals={1} /> : "–",
          observed: figures.observedPeakPower ? (
            <Figure value={figures.observedPeakPower.value} unit="kW" decimals={1} />
          ) : (
            "–"
          ),
          torque: figures.peakTorque ? <Figure value={figures.peakTorque.value} unit="N·m" /> : "–",
          counts: `${figures.runs} of ${runs.length}`,
        }}
      />
      <p>{spreadText(session)}</p>
      <p className="fine">{correctionText(session)}</p>
      <p className="fine">{conditionsText(session)}</p>
      <RepeatabilitySection session={session} title={sessionTitle(session, timeZone)} />
      <CorrectionSection session={session} title={sessionTitle(session, timeZone)} />
      <p className="fine">
        Operator {session.operator}. Log{" "}
        <a href={`/api/files/${session.sourceSha256}`}>{session.sourceName}</a>,{" "}
        {figureText(session.rowCount)} rows. {session.note}
      </p>
      <Remarks session={session} />
      <p className="no-print">
        <Link href={runsHref}>See its runs over one another</Link>
      </p>
      {mayMeasure && !session.isSettled && (
        <RunForms session={session} title={sessionTitle(session, timeZone)} />
      )}
    </div>
  );
}

/** What was noticed at the import, of the session and of single runs. */
function Remarks({ session: { id, warnings, runs } }: Pick<SessionSectionProps, "session">) {
  const ofRuns = runs.flatMap((run) => run.warnings.map((warning) => `Run ${run.number}: ${warning}`));
  const all = [...warnings, ...ofRuns];
  if (all.length === 0) return null;
  return (
    <ul className="dyno-remarks">
      {all.map((remark) => (
        <li key={`${id} ${remark}`}>{remark}</li>
      ))}
    </ul>
  );
}
