import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { Moment } from "@/design/moment";
import { momentText } from "@/design/moment-text";
import { RuledTable } from "@/design/ruled-table";
import { SentenceList } from "@/design/sentence-list";
import { Section } from "@/design/sheet";
import { kindWords } from "./session-words";
import type { DynoDay } from "./shown-dyno";

interface DayProps {
  readonly day: DynoDay;
}

export function BookingsOfDay({ day: { bookings, timeZone } }: DayProps) {
  return (
    <Section title="On the dyno today">
      <SentenceList
        label="On the dyno today"
        sentences={bookings.map(({ id, job, work, startsAt, endsAt, resource }) => ({
          id,
          sentence: (
            <>
              {momentText(startsAt, timeZone, "time")} to {momentText(endsAt, timeZone, "time")}: {work},{" "}
              {job.vehicle.plate}
            </>
          ),
          note: `${job.vehicle.vehicleModel.name}, job ${job.number}, ${resource}`,
          action: <ButtonLink href={`/dyno/jobs/${job.id}`}>Runs of job {job.number}</ButtonLink>,
        }))}
        empty={<EmptyState sentence="The dyno is free today." />}
      />
    </Section>
  );
}

export function Waiting({ day: { baselinesWaiting, proofsWaiting } }: DayProps) {
  const baselines = baselinesWaiting.map(({ id, number, vehicle, customer }) => ({
    id,
    sentence: `${vehicle.plate} has no baseline; nothing that cannot go back is ordered before it.`,
    note: `${vehicle.vehicleModel.name} of ${customer}, build ${number}`,
    action: <ButtonLink href={`/dyno/vehicles/${vehicle.id}`}>Baseline of {vehicle.plate}</ButtonLink>,
  }));
  const proofs = proofsWaiting.map(({ id, number, vehicle, lowKw, highKw, isMeasured, statusWords }) => ({
    id,
    sentence: isMeasured
      ? `${vehicle.plate} is measured; its verdict is not released.`
      : `${vehicle.plate} is promised ${figureText(lowKw)} to ${figureText(highKw)} kW and not measured yet.`,
    note: `${vehicle.vehicleModel.name}, job ${number}, ${statusWords}`,
    action: <ButtonLink href={`/dyno/jobs/${id}`}>Proof of job {number}</ButtonLink>,
  }));
  return (
    <Section title="Waits for the dyno">
      <SentenceList
        label="Waits for the dyno"
        sentences={[...proofs, ...baselines]}
        empty={<EmptyState sentence="Nothing waits for the dyno." />}
      />
    </Section>
  );
}

const columns = [
  { id: "vehicle", title: "Vehicle" },
  { id: "kind", title: "Runs" },
  { id: "power", title: "Power", align: "figure" },
  { id: "torque", title: "Torque", align: "figure" },
  { id: "at", title: "Measured" },
] as const;

export function RecentSessions({ day: { sessions, timeZone } }: DayProps) {
  return (
    <Section
      title="Measured last"
      aside={<span className="fine">mean of the peaks at the hubs, corrected</span>}
    >
      <RuledTable
        caption="Measured last"
        isCaptionHidden
        columns={columns}
        empty={<EmptyState sentence="Nothing is measured yet." />}
        rows={sessions.map(({ id, kind, vehicle, job, runs, counted, peakKw, peakNm, doneAt, operator }) => ({
          id,
          cells: {
            vehicle: (
              <Link href={job ? `/dyno/jobs/${job.id}` : `/dyno/vehicles/${vehicle.id}`}>
                <span className="figure">{vehicle.plate}</span>
              </Link>
            ),
            kind: (
              <>
                {kindWords[kind]} <span className="fine figure">{runsText(counted, runs)}</span>
              </>
            ),
            power: peakKw === null ? "–" : <Figure value={peakKw} unit="kW" />,
            torque: peakNm === null ? "–" : <Figure value={peakNm} unit="N·m" />,
            at: (
              <>
                <Moment at={doneAt} timeZone={timeZone} /> <span className="fine">{operator}</span>
              </>
            ),
          },
        }))}
      />
    </Section>
  );
}

function runsText(counted: number, runs: number): string {
  return counted === runs ? `${runs} runs` : `${counted} of ${runs} count`;
}
