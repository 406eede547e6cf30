import type { CompletionQuestion } from "../complete/completion-question";

/** The question with only those chosen, groups and rules. */
export function onlyOf(question: CompletionQuestion, ids: ReadonlySet<string>): CompletionQuestion {
  const { items, groups = [], rules = [] } = question.model;
  return {
    ...question,
    model: {
      items,
      groups: groups.filter(({ id }) => ids.has(id)),
      rules: rules.filter(({ id }) => ids.has(id)),
    },
    chosen: question.chosen?.filter((id) => ids.has(id)),
  };
}
