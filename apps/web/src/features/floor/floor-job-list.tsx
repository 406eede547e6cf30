import type { myDay, UseCase } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { ButtonLink } from "@/design/button";
import { momentText } from "@/design/moment-text";
import { SentenceList } from "@/design/sentence-list";

type Day = typeof myDay extends UseCase<infer _Schema, infer Value> ? Value : never;
type FloorJob = Day["booked"][number];

interface FloorJobListProps {
  readonly label: string;
  readonly jobs: readonly FloorJob[];
  readonly personId: string;
  readonly timeZone: string;
  readonly empty: ReactNode;
}

/** Vehicles with where they stand, when they are booked and what is next. */
export function FloorJobList({ label, jobs, personId, timeZone, empty }: FloorJobListProps) {
  return (
    <SentenceList
      label={label}
      empty={empty}
      sentences={jobs.map((job) => ({
        id: job.id,
        sentence: (
          <>
            <span className="floor-job">{job.plate}</span> {job.model}
            {job.packageName && `, ${job.packageName}`}
          </>
        ),
        note: <JobNote job={job} personId={personId} timeZone={timeZone} />,
        action:
          job.next.kind === "check-in" ? (
            <ButtonLink variant="primary" href={`/floor/jobs/${job.id}/check-in`}>
              {`Check in ${job.plate}`}
            </ButtonLink>
          ) : (
            <ButtonLink href={`/floor/jobs/${job.id}`}>{`Card ${job.number}`}</ButtonLink>
          ),
      }))}
    />
  );
}

function JobNote({
  job,
  personId,
  timeZone,
}: Pick<FloorJobListProps, "personId" | "timeZone"> & { job: FloorJob }) {
  const mine = job.today.filter((block) => block.personId === personId);
  const time = (at: Date) => momentText(at, timeZone, "time");
  return (
    <>
      {mine.map(({ startsAt, endsAt, work }) => (
        <span key={startsAt.toISOString()} className="sentence-note">
          {time(startsAt)} to {time(endsAt)}: {work}
        </span>
      ))}
      <span className="sentence-note">
        Stands: {job.stands} · {job.statusWords} · {job.steps.done} of {job.steps.all} steps
        {job.faults > 0 && ` · ${job.faults === 1 ? "1 open fault" : `${job.faults} open faults`}`}
        {job.clockedOn.length > 0 && ` · clocked on: ${job.clockedOn.join(", ")}`}
      </span>
      <span className="sentence-note">
        <strong>Next:</strong> {job.operation && job.next.kind === "step" && `${job.operation}: `}
        {job.next.words}
      </span>
    </>
  );
}
