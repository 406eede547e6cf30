import type { AddedFigures } from "../complete/added-figures";
import type { Clash } from "../complete/clash";
import { bestCompletion, type Completion } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import type { Search } from "../complete/search-program";

/** What is possible when one member of a clash gives way. */
export type WayOut = AddedFigures & {
  readonly kind: "chosen" | "group" | "rule";
  readonly id: string;
  /** The best completion without it; impossible where something else clashes too. */
  readonly completion: Completion;
};

/**
 * For each member of a clash what would be possible without it: the choices first, then groups and rules. The
 * time is shared among them evenly. Which rules may give way at all is for the caller to say.
 */
export async function waysOut(
  question: CompletionQuestion,
  clash: Clash,
  search: Search,
): Promise<readonly WayOut[]> {
  const members = [
    ...clash.chosen.map((id) => ({ kind: "chosen" as const, id })),
    ...clash.groups.map((id) => ({ kind: "group" as const, id })),
    ...clash.rules.map((id) => ({ kind: "rule" as const, id })),
  ];
  const ways: WayOut[] = [];
  for (const [at, { kind, id }] of members.entries()) {
    const part = 1 / (members.length - at);
    const { completion, figures } = await bestCompletion(without(question, id), (program, share = 1) =>
      search(program, share * part),
    );
    ways.push({ kind, id, completion, ...figures });
  }
  return ways;
}

function without(question: CompletionQuestion, id: string): CompletionQuestion {
  const { items, groups, rules } = question.model;
  const isOther = (each: { readonly id: string }): boolean => each.id !== id;
  return {
    ...question,
    model: { items, groups: groups?.filter(isOther), rules: rules?.filter(isOther) },
    chosen: question.chosen?.filter((each) => each !== id),
  };
}
