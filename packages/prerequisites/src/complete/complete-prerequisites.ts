import { decimalToNumber } from "@buildproof/units";
import type { AddedFigures } from "./added-figures";
import { type Because, becauseOf } from "./because";
import { bestAddition } from "./best-addition";
import { type Clash, clashIn } from "./clash";
import type { CompletionQuestion } from "./completion-question";
import { asDecimal, type Measure, totalOf } from "./measures";
import { choicesOf, type Problem, problemOf } from "./problem";
import { propagate } from "./propagate";
import { residue } from "./residue";
import type { Search } from "./search-program";

export type Completion = {
  readonly status: "optimal" | "impossible" | "time-limit";
  /** What is added to the chosen, in the order of the items. */
  readonly add: readonly string[];
  /** The asked measure of what is added: a sum, or the largest lead time. */
  readonly total: number | null;
  /** No completion has a smaller total. */
  readonly bound: number | null;
  readonly because: readonly Because[];
  readonly clash: Clash;
};

type WithFigures = { readonly completion: Completion; readonly figures: AddedFigures };

const NO_CLASH: Clash = { chosen: [], groups: [], rules: [] };

/**
 * The best way to complete a choice: least of the asked measure, then price, hours, lead time and number
 * of items, then earlier in `items`. So the answer is one, and nothing in it can be left out.
 *
 * @throws ImpossibleInputError for an unknown or doubled id, an item chosen and barred at once, or a derived item
 *         that comes from itself.
 */
export async function completePrerequisites(
  question: CompletionQuestion,
  search: Search,
): Promise<Completion> {
  return (await bestCompletion(question, search)).completion;
}

/** The best completion, and what it adds in every measure, derived items included. */
export async function bestCompletion(question: CompletionQuestion, search: Search): Promise<WithFigures> {
  const problem = problemOf(question);
  const { encoding, measures, chosen, barred } = problem;
  const { values, conflict } = propagate(encoding, [...chosen, ...barred]);
  if (conflict) return impossible(problem, search);
  const inAnyhow = new Set(chosen.map((literal) => literal - 1));
  const forced = problem.ready.model.items.flatMap((_, index) =>
    values[index + 1] === 1 && !inAnyhow.has(index) ? [index] : [],
  );
  const { minimise = "price" } = question;
  const parts = residue(encoding, values);
  const addition = await bestAddition({ parts, items: encoding.items, measures, minimise, forced }, search);
  if (addition.status === "impossible") return impossible(problem, search);

  const add = addition.add && [...forced, ...addition.add].sort((a, b) => a - b);
  const figureOf = (measure: Measure, total: bigint): number =>
    decimalToNumber(asDecimal(measures, measure, total));
  const figure = (measure: Measure): number => figureOf(measure, totalOf(measures, measure, add ?? []));
  const total = add && figure(minimise);
  const bound = addition.status === "optimal" ? total : figureOf(minimise, addition.bound);
  const ids = choicesOf(problem, add ?? []);
  const completion: Completion = {
    status: addition.status,
    add: ids,
    total,
    bound,
    because: becauseOf(problem, question.chosen ?? [], ids),
    clash: NO_CLASH,
  };
  return {
    completion,
    figures: { price: figure("price"), hours: figure("hours"), leadDays: figure("leadDays") },
  };
}

async function impossible(problem: Problem, search: Search): Promise<WithFigures> {
  const nothing = { add: [], total: null, bound: null, because: [] };
  const clash = await clashIn(problem, search);
  return {
    completion: clash
      ? { status: "impossible", ...nothing, clash }
      : { status: "time-limit", ...nothing, clash: NO_CLASH },
    figures: { price: 0, hours: 0, leadDays: 0 },
  };
}
