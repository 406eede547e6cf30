"use client";

import Link from "next/link";
import { Button } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { Section } from "@/design/sheet";
import type { BookableJob } from "./booking-draft";

interface WaitingListProps {
  readonly jobs: readonly BookableJob[];
  /** Waiting jobs that are not shown here. */
  readonly elsewhere: number;
  readonly onBook: ((jobId: string) => void) | null;
}

/** Jobs that wait for time, each with what keeps it from being booked. */
export function WaitingList({ jobs, elsewhere, onBook }: WaitingListProps) {
  return (
    <Section
      title="Waiting for time"
      aside={<span className="fine">{countWords(jobs.length + elsewhere)}</span>}
    >
      {jobs.length === 0 ? (
        <EmptyState sentence="No job waits for time. A job appears here when its quote is accepted." />
      ) : (
        <ol className="sentences" aria-label="Waiting jobs">
          {jobs.map((job) => (
            <li key={job.id} className="sentence">
              <div>
                <Link href={`/jobs/${job.id}`}>{job.label}</Link>
                {job.points.length === 0 ? (
                  <span className="sentence-note">Everything is met: it only needs its time.</span>
                ) : (
                  <ul className="waiting-points">
                    {job.points.map(({ point, sentence, safety }) => (
                      <li key={point}>
                        {sentence}
                        {safety && <strong> Safety: never overridden.</strong>}
                      </li>
                    ))}
                  </ul>
                )}
              </div>
              {onBook && (
                <div className="sentence-action">
                  <Button onPress={() => onBook(job.id)} aria-label={`Book ${job.label}`}>
                    Book
                  </Button>
                </div>
              )}
            </li>
          ))}
        </ol>
      )}
      {elsewhere > 0 && (
        <p>
          <Link href="/jobs?view=waiting">{`${elsewhere} more are on the list of jobs`}</Link>
        </p>
      )}
    </Section>
  );
}

function countWords(count: number): string {
  return count === 1 ? "1 job" : `${count} jobs`;
}
