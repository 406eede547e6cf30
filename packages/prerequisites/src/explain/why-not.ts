import { completePrerequisites } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import type { Search } from "../complete/search-program";
import type { Obstacle } from "./obstacle";

export type WhyNot =
  /** Some selection contains it and all the choices that do not clash without it. */
  | { readonly status: "possible" }
  | { readonly status: "impossible"; readonly obstacle: Obstacle }
  | { readonly status: "time-limit" };

type Question = Omit<CompletionQuestion, "minimise">;

/**
 * Whether one item can be added to the present choices, proven by a solver where `obstacles` is silent: if not,
 * a set of choices, groups and rules from which nothing can be left out, and the choices that would have to go.
 *
 * @throws ImpossibleInputError for an unknown or doubled id, an item chosen and barred at once, or an item that
 *         is chosen already or barred.
 */
export async function whyNot(question: Question, item: string, search: Search): Promise<WhyNot> {
  let kept = question.chosen ?? [];
  let obstacle: Obstacle | null = null;
  const gone: string[] = [];
  for (;;) {
    const { status, clash } = await completePrerequisites({ ...question, chosen: [...kept, item] }, search);
    if (status === "time-limit") return { status };
    if (status === "optimal") break;
    const others = clash.chosen.filter((id) => id !== item);
    const last = others.at(-1);
    if (clash.chosen.includes(item)) {
      const { groups, rules } = clash;
      obstacle ??= { item, chosen: others, groups, rules, barred: [], replaces: [] };
      if (last === undefined)
        return { status: "impossible", obstacle: { ...obstacle, chosen: [], groups, rules } };
      gone.push(last);
    }
    // Choices that clash without the item are no fault of the item.
    if (last === undefined) return { status: "possible" };
    kept = kept.filter((id) => id !== last);
  }
  if (!obstacle) return { status: "possible" };
  const replaces = await neededOf(gone, { ...question, chosen: [...kept, item] }, search);
  return { status: "impossible", obstacle: { ...obstacle, replaces } };
}

/** Of choices that were taken out those that cannot come back. */
async function neededOf(
  gone: readonly string[],
  without: Question,
  search: Search,
): Promise<readonly string[]> {
  const needed: string[] = [];
  let chosen = without.chosen ?? [];
  for (const id of gone) {
    const { status } = await completePrerequisites({ ...without, chosen: [...chosen, id] }, search);
    if (status === "optimal") chosen = [...chosen, id];
    else needed.push(id);
  }
  return needed;
}
