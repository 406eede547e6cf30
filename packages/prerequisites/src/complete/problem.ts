import { checkChoice } from "../model/check-ids";
import { type DerivedItem, derivedFrom } from "../model/derived-item";
import { NO_FACTS } from "../model/model";
import { type PreparedModel, prepare } from "../model/prepare";
import { type Situation, situation } from "../model/situation";
import { withDerived } from "../model/with-derived";
import type { CompletionQuestion } from "./completion-question";
import { encode } from "./encode";
import type { Encoding, Literal } from "./encoding";
import { type Measures, measuresOf } from "./measures";

/** A question made ready: the catalogue on one vehicle, what stays in and what stays out. */
export type Problem = {
  readonly ready: PreparedModel;
  /** Nothing selected, on this vehicle. */
  readonly bare: Situation;
  readonly encoding: Encoding;
  readonly measures: Measures;
  readonly chosen: readonly Literal[];
  /** As literals that say "not". */
  readonly barred: readonly Literal[];
  readonly derived: readonly DerivedItem[];
  /** How many items can be chosen; those after them are derived. */
  readonly choices: number;
  /** Constraints from this origin on say where derived items come from, and always hold; absent where there are none. */
  readonly given?: number;
};

export function idsOf({ ready }: Pick<Problem, "ready">, indices: readonly number[]): readonly string[] {
  return indices.map((index) => ready.model.items[index]?.id ?? "");
}

/** Ids of what can be chosen among some items. */
export function choicesOf(problem: Problem, indices: readonly number[]): readonly string[] {
  return idsOf(
    problem,
    indices.filter((index) => index < problem.choices),
  );
}

/** @throws ImpossibleInputError for an unknown or doubled id, or an item chosen and barred at once. */
export function problemOf({
  model,
  chosen = [],
  barred = [],
  facts = NO_FACTS,
  derived = [],
}: Omit<CompletionQuestion, "minimise">): Problem {
  const whole = withDerived(model, derived);
  const ready = prepare(whole);
  const places = new Map(model.items.map(({ id }, index) => [id, index + 1]));
  checkChoice(derived.length > 0 ? new Set(places.keys()) : ready.itemIds, chosen, barred);
  const literals = (ids: readonly string[]): readonly number[] =>
    ids.flatMap((id) => places.get(id) ?? []).sort((a, b) => a - b);
  const paid = new Set(derivedFrom(derived, chosen));
  const priced = whole.items.map((item) => (paid.has(item.id) ? { id: item.id } : item));
  return {
    ready,
    bare: situation([], facts),
    encoding: encode(whole, facts),
    measures: measuresOf(priced, model.items.length),
    chosen: literals(chosen),
    barred: literals(barred).map((literal) => -literal),
    derived,
    choices: model.items.length,
    given: (model.groups?.length ?? 0) + (model.rules?.length ?? 0),
  };
}
