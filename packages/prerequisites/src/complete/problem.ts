import { checkChoice } from "../model/check-ids";
import { NO_FACTS } from "../model/model";
import { type PreparedModel, prepare } from "../model/prepare";
import { type Situation, situation } from "../model/situation";
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
};

export function idsOf({ ready }: Problem, indices: readonly number[]): readonly string[] {
  return indices.map((index) => ready.model.items[index]?.id ?? "");
}

/** @throws ImpossibleInputError for an unknown or doubled id, or an item chosen and barred at once. */
export function problemOf({
  model,
  chosen = [],
  barred = [],
  facts = NO_FACTS,
}: Omit<CompletionQuestion, "minimise">): Problem {
  const ready = prepare(model);
  checkChoice(ready.itemIds, chosen, barred);
  const places = new Map(model.items.map(({ id }, index) => [id, index + 1]));
  const literals = (ids: readonly string[]): readonly number[] =>
    ids.flatMap((id) => places.get(id) ?? []).sort((a, b) => a - b);
  return {
    ready,
    bare: situation([], facts),
    encoding: encode(model, facts),
    measures: measuresOf(model.items),
    chosen: literals(chosen),
    barred: literals(barred).map((literal) => -literal),
  };
}
