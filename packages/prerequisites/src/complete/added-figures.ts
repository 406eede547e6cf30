import { decimalToNumber } from "@buildproof/units";
import type { Item } from "../model/model";
import { asDecimal, type Measure, measuresOf, totalOf } from "./measures";

export type AddedFigures = {
  /** Sums over what is added, in the model's own units. */
  readonly price: number;
  readonly hours: number;
  /** The largest of what is added. */
  readonly leadDays: number;
};

/** What adding items comes to in every measure, summed exactly. */
export function addedFigures(items: readonly Item[], added: readonly string[]): AddedFigures {
  const isAdded = new Set(added);
  const own = items.filter(({ id }) => isAdded.has(id));
  const measures = measuresOf(own);
  const figure = (measure: Measure): number =>
    decimalToNumber(asDecimal(measures, measure, totalOf(measures, measure, own.keys())));
  return { price: figure("price"), hours: figure("hours"), leadDays: figure("leadDays") };
}
