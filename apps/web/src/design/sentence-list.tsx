import type { ReactNode } from "react";

interface Sentence {
  readonly id: string;
  readonly sentence: ReactNode;
  readonly note?: ReactNode;
  /** The one thing that moves it on. */
  readonly action?: ReactNode;
  /** `blocks`: work cannot go on, or someone could be hurt. */
  readonly weight?: "ordinary" | "blocks";
}

interface SentenceListProps {
  readonly label: string;
  readonly sentences: readonly Sentence[];
  readonly empty?: ReactNode;
}

/** What is owed, in order of urgency, in sentences. */
export function SentenceList({ label, sentences, empty }: SentenceListProps) {
  if (sentences.length === 0) return <>{empty}</>;
  return (
    <ol className="sentences" aria-label={label}>
      {sentences.map(({ id, sentence, note, action, weight = "ordinary" }) => (
        <li key={id} className="sentence" data-weight={weight}>
          <div>
            {sentence}
            {note && <span className="sentence-note">{note}</span>}
          </div>
          {action && <div className="sentence-action">{action}</div>}
        </li>
      ))}
    </ol>
  );
}
