import type { AddedFigures } from "./added-figures";
import { bestCompletion, type Completion } from "./complete-prerequisites";
import type { CompletionQuestion } from "./completion-question";
import type { Measure } from "./measures";
import type { Search } from "./search-program";

export type Alternative = AddedFigures & {
  /** The measures that this completion is the best in. */
  readonly bestFor: readonly Measure[];
  readonly completion: Completion;
};

const MEASURES = ["price", "hours", "leadDays"] as const;

/**
 * The cheapest completion, the one with the least workshop time and the soonest, each once. Each is the
 * best in one measure and, where that is equal, in the others in turn: so none of them is worse than
 * another in all three, and the same question has the same answer. Each measure has a third of the time;
 * one that is not proven in it says so in its completion's status. Empty when nothing completes the choice,
 * or nothing was found in time.
 *
 * @throws ImpossibleInputError for an unknown or doubled id, or an item chosen and barred at once.
 */
export async function alternativeCompletions(
  question: Omit<CompletionQuestion, "minimise">,
  search: Search,
): Promise<readonly Alternative[]> {
  const alternatives = new Map<string, Alternative>();
  for (const [at, minimise] of MEASURES.entries()) {
    const part = 1 / (MEASURES.length - at);
    const timed: Search = (program, share = 1) => search(program, share * part);
    const { completion, figures } = await bestCompletion({ ...question, minimise }, timed);
    if (completion.status === "impossible") return [];
    if (completion.total === null) continue;
    const key = JSON.stringify(completion.add);
    const bestFor = [...(alternatives.get(key)?.bestFor ?? []), minimise];
    alternatives.set(key, { bestFor, completion, ...figures });
  }
  const found = [...alternatives.values()];
  return found.filter((one) => !found.some((other) => isWorse(one, other)));
}

/** Where the time was up: what was found for one measure may be beaten in all of them by what another found. */
function isWorse(one: AddedFigures, other: AddedFigures): boolean {
  return (
    MEASURES.every((each) => one[each] >= other[each]) && MEASURES.some((each) => one[each] > other[each])
  );
}
