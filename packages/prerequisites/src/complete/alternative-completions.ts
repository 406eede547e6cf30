import { decimalToNumber } from "@buildproof/units";
import { type Completion, completePrerequisites } from "./complete-prerequisites";
import type { CompletionQuestion } from "./completion-question";
import { asDecimal, type Measure, measuresOf, totalOf } from "./measures";
import type { Search } from "./search-program";

export type Alternative = {
  /** The measures that this completion is the best in. */
  readonly bestFor: readonly Measure[];
  readonly completion: Completion;
  readonly price: number;
  readonly hours: number;
  readonly leadDays: number;
};

/**
 * The cheapest completion, the one with the least workshop time and the soonest, each once. Each is the
 * best in one measure and, where that is equal, in the others in turn: so none of them is worse than
 * another in all three. Empty when nothing completes the choice, or nothing was found in time.
 */
export async function alternativeCompletions(
  question: Omit<CompletionQuestion, "minimise">,
  search: Search,
): Promise<readonly Alternative[]> {
  const { items } = question.model;
  const places = new Map(items.map(({ id }, index) => [id, index]));
  const measures = measuresOf(items);
  const alternatives = new Map<string, Alternative>();
  for (const minimise of ["price", "hours", "leadDays"] as const) {
    const completion = await completePrerequisites({ ...question, minimise }, search);
    if (completion.total === null) continue;
    const added = completion.add.flatMap((id) => places.get(id) ?? []);
    const figure = (measure: Measure): number =>
      decimalToNumber(asDecimal(measures, measure, totalOf(measures, measure, added)));
    const key = JSON.stringify(completion.add);
    const bestFor = [...(alternatives.get(key)?.bestFor ?? []), minimise];
    const figures = { price: figure("price"), hours: figure("hours"), leadDays: figure("leadDays") };
    alternatives.set(key, { bestFor, completion, ...figures });
  }
  return [...alternatives.values()];
}
