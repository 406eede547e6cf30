import type { ClockEntry } from "@buildproof/workshop";
import { EmptyState } from "@/design/empty-state";
import { momentText } from "@/design/moment-text";
import { SentenceList } from "@/design/sentence-list";
import { localText, spanText } from "@/features/plan/local-text";
import { CorrectClock } from "./correct-clock";

interface ClockEntryListProps {
  readonly entries: readonly ClockEntry[];
  readonly timeZone: string;
  /** What tells the entries apart: the job on a person's day, the person on a job's page. */
  readonly by: "job" | "person";
  readonly empty: string;
}

/** Clock entries with the end that counts; where it was set right, by whom and why. */
export function ClockEntryList({ entries, timeZone, by, empty }: ClockEntryListProps) {
  return (
    <SentenceList
      label="Clock entries"
      empty={<EmptyState sentence={empty} />}
      sentences={entries.map((entry) => {
        const { id, correction, stoppedAt, startedAt } = entry;
        const who = by === "job" ? `Job ${entry.job.number}` : entry.personName;
        const span = stoppedAt
          ? spanText(startedAt, stoppedAt, timeZone)
          : `${momentText(startedAt, timeZone)}, still running`;
        return {
          id,
          sentence: `${who}, ${entry.operationName}: ${span}${entry.minutes === null ? "" : `, ${hoursText(entry.minutes)}`}`,
          note: correction && `Corrected by ${correction.by}: ${correction.because}`,
          action: entry.mayCorrect && (
            <CorrectClock
              entryId={id}
              entry={`${entry.personName} on job ${entry.job.number}, ${entry.operationName}, from ${momentText(startedAt, timeZone)}`}
              stoppedAt={stoppedAt ? localText(stoppedAt, timeZone) : ""}
            />
          ),
        };
      })}
    />
  );
}

/** "1 h 05 min", kept on one line. */
function hoursText(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return hours === 0 ? `${rest}\u00a0min` : `${hours}\u00a0h\u00a0${String(rest).padStart(2, "0")}\u00a0min`;
}
