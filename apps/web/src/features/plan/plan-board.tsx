"use client";

import { useRef, useState } from "react";
import { Select } from "@/design/select";
import { Section } from "@/design/sheet";
import { type BookableJob, firstDraft, type ResourceChoice, withPlace } from "./booking-draft";
import { BookingForm } from "./booking-form";
import { localText } from "./local-text";
import { PlanGrid, type PlanRow } from "./plan-grid";
import type { TimeAxis } from "./time-axis";
import { WaitingList } from "./waiting-list";

interface PlanBoardProps {
  readonly axis: TimeAxis;
  readonly rows: readonly PlanRow[];
  readonly now: Date;
  readonly timeZone: string;
  /** The day that a fresh draft proposes. */
  readonly day: string;
  readonly jobs: readonly BookableJob[];
  readonly chosenJobId: string | null;
  readonly resources: readonly ResourceChoice[];
  readonly mayBook: boolean;
  readonly waitingElsewhere: number;
}

const HALF_A_DAY = 4 * 3_600_000;

/** The plan with its waiting list, and the form that a place on the plan or a waiting job opens. */
export function PlanBoard(props: PlanBoardProps) {
  const { axis, rows, now, timeZone, day, jobs, resources, mayBook } = props;
  const [jobId, setJobId] = useState(props.chosenJobId ?? jobs[0]?.id ?? "");
  const job = jobs.find(({ id }) => id === jobId) ?? jobs[0];
  const [draft, setDraft] = useState(() => firstDraft(day, job?.work ?? []));
  const form = useRef<HTMLDivElement>(null);

  const choose = (id: string) => {
    setJobId(id);
    setDraft(firstDraft(day, jobs.find((each) => each.id === id)?.work ?? []));
  };
  const goToForm = () => {
    form.current?.scrollIntoView({ block: "start" });
    form.current?.focus();
  };
  const point = (resourceId: string, at: Date) => {
    const resource = resources.find(({ id }) => id === resourceId);
    if (!resource) return;
    const endsAt = localText(new Date(at.getTime() + HALF_A_DAY), timeZone);
    setDraft((before) => withPlace(before, { resource, startsAt: localText(at, timeZone), endsAt }));
    goToForm();
  };

  return (
    <>
      <PlanGrid
        axis={axis}
        rows={rows}
        now={now}
        timeZone={timeZone}
        onPlace={mayBook && job ? point : null}
      />
      <WaitingList
        jobs={jobs}
        elsewhere={props.waitingElsewhere}
        onBook={
          mayBook
            ? (id) => {
                choose(id);
                goToForm();
              }
            : null
        }
      />
      {mayBook && job && (
        <div ref={form} tabIndex={-1} className="booking-place" id="book">
          <Section title="Book time">
            <Select
              label="Job"
              options={jobs.map(({ id, label }) => ({ id, label }))}
              value={job.id}
              onChange={choose}
            />
            <BookingForm
              job={job}
              resources={resources}
              draft={draft}
              onDraft={setDraft}
              onBooked={() => setDraft(firstDraft(day, job.work))}
            />
          </Section>
        </div>
      )}
    </>
  );
}
