import { contentWords, type WordsFor } from "./content-words";
import { nameOfChange, type PartChange, type PartKind } from "./part-content";

/** What a change makes of one thing that is said about a part: null where nothing was said. */
export type Difference = {
  readonly label: string;
  readonly before: string | null;
  readonly after: string | null;
};

export type ChangeInWords = {
  readonly part: PartKind;
  readonly code: string;
  readonly name: string;
  readonly kind: "new" | "changed" | "gone";
  readonly differences: readonly Difference[];
};

/** A change of the catalogue in words and figures: only what differs. */
export function changeInWords(change: PartChange, on: WordsFor): ChangeInWords {
  const { part, code, before, after } = change;
  const was = before ? contentWords(part, before, on) : [];
  const is = after ? contentWords(part, after, on) : [];
  const labels = [...new Set([...was, ...is].map(({ label }) => label))];
  const wordsIn = (said: typeof was, label: string) =>
    said.find((each) => each.label === label)?.words ?? null;
  return {
    part,
    code,
    name: nameOfChange(change),
    kind: before ? (after ? "changed" : "gone") : "new",
    differences: labels
      .map((label) => ({ label, before: wordsIn(was, label), after: wordsIn(is, label) }))
      .filter((difference) => difference.before !== difference.after),
  };
}
