import type { ChassisFinding } from "@buildproof/workshop";
import { Condition } from "@/design/condition";
import { SentenceList } from "@/design/sentence-list";

interface FindingLinesProps {
  readonly label: string;
  readonly findings: readonly ChassisFinding[];
}

/** What is found of each limit: its grade in a word, then the sentence. */
export function FindingLines({ label, findings }: FindingLinesProps) {
  return (
    <SentenceList
      label={label}
      sentences={findings.map(({ id, grade, sentence }) => ({
        id,
        sentence: (
          <>
            <Condition grade={grade} /> {sentence}
          </>
        ),
        weight: grade === "stop" ? "blocks" : "ordinary",
      }))}
    />
  );
}
