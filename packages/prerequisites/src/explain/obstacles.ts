import type { CompletionQuestion } from "../complete/completion-question";
import type { Conflict } from "../complete/conflict";
import type { Literal } from "../complete/encoding";
import { idsOf, type Problem, problemOf } from "../complete/problem";
import type { Obstacle } from "./obstacle";
import { type Core, Standing } from "./standing";

export type ChoiceQuestion = Omit<CompletionQuestion, "minimise"> & {
  /** Rules that are put right otherwise than by items, such as an inspection still to be done: they bar nothing. */
  readonly otherwise?: readonly string[] | undefined;
};

/**
 * For every item that cannot be added to the present choices: a set of choices, groups and rules that
 * stands in its way and of which nothing can be left out, and the choices that would have to go for it.
 * Fast enough for a whole catalogue at every choice. It never names an item that some selection with all
 * choices contains; where following the rules step by step does not decide, it is silent, and `whyNot`
 * can ask a solver. Of choices that clash with each other, those later in the catalogue are left aside.
 *
 * @throws ImpossibleInputError for an unknown or doubled id, or an item chosen and barred at once.
 */
export function obstacles(question: ChoiceQuestion): readonly Obstacle[] {
  const problem = problemOf(withoutRules(question));
  const standing = new Standing(problem);
  const chosen = new Set(problem.chosen);
  const blocked = new Map<Literal, Conflict>();
  for (let literal = 1; literal <= problem.choices; literal += 1) {
    const conflict = chosen.has(literal) ? null : standing.conflictWith(literal);
    if (conflict) blocked.set(literal, conflict);
  }
  const withoutChoices = standing.withoutChoices([...blocked.keys()]);
  return [...blocked].map(([literal, conflict]) => {
    const without = withoutChoices.get(literal) ?? [];
    const core = standing.smallestCore(literal, "origins" in without ? without : conflict);
    return obstacleOf(problem, literal, core, "origins" in without ? [] : without);
  });
}

function obstacleOf(problem: Problem, item: Literal, core: Core, replaces: readonly Literal[]): Obstacle {
  const ids = (literals: readonly Literal[]): readonly string[] =>
    idsOf(
      problem,
      literals.map((literal) => Math.abs(literal) - 1),
    );
  return {
    item: ids([item])[0] ?? "",
    chosen: ids(core.chosen),
    ...namesOf(problem, core.origins),
    barred: ids(core.barred),
    replaces: ids(replaces),
  };
}

function withoutRules({ otherwise = [], ...question }: ChoiceQuestion): ChoiceQuestion {
  if (otherwise.length === 0) return question;
  const aside = new Set(otherwise);
  const { model } = question;
  return { ...question, model: { ...model, rules: model.rules?.filter(({ id }) => !aside.has(id)) } };
}

function namesOf(
  { ready, given = Number.POSITIVE_INFINITY }: Problem,
  origins: readonly number[],
): Pick<Obstacle, "groups" | "rules"> {
  const groups = ready.model.groups?.length ?? 0;
  const names = (list: readonly number[]): readonly string[] =>
    list.map((origin) => ready.constraints[origin]?.id ?? "");
  return {
    groups: names(origins.filter((origin) => origin < groups)),
    rules: names(origins.filter((origin) => origin >= groups && origin < given)),
  };
}
