import {
  coefficientAt,
  decimalToNumber,
  type ExactDecimal,
  exactDecimal,
  ImpossibleInputError,
} from "@buildproof/units";
import type { Item } from "../model/model";

export type Measure = "price" | "hours" | "leadDays";

/** A measure of every item as whole numbers of 10^−scale. */
export type Measured = { readonly scale: number; readonly amounts: readonly bigint[] };

export type Measures = Readonly<Record<Measure, Measured>> & {
  /** Only the first so many items are counted and put in order; those after them are nobody's choice. */
  readonly counted: number;
};

export function measuresOf(items: readonly Item[], counted = items.length): Measures {
  const measured = (measure: Measure): Measured => {
    const read = items.map((item) => exactDecimal(item[measure] ?? 0));
    const scale = Math.max(0, ...read.map((each) => each.scale));
    const amounts = read.map((each) => coefficientAt(each, scale));
    const coefficient = amounts.reduce((sum, amount) => sum + amount, 0n);
    if (!Number.isFinite(decimalToNumber({ coefficient, scale }))) throw tooLarge(measure);
    return { scale, amounts };
  };
  return {
    price: measured("price"),
    hours: measured("hours"),
    leadDays: measured("leadDays"),
    counted,
  };
}

/** What items cost in one measure: the largest lead time, the sum of the others. */
export function totalOf(measures: Measures, measure: Measure, indices: Iterable<number>): bigint {
  const { amounts } = measures[measure];
  let total = 0n;
  for (const index of indices) {
    const amount = amounts[index] ?? 0n;
    if (measure !== "leadDays") total += amount;
    else if (amount > total) total = amount;
  }
  return total;
}

export function asDecimal(measures: Measures, measure: Measure, total: bigint): ExactDecimal {
  return { coefficient: total, scale: measures[measure].scale };
}

function tooLarge(measure: Measure): ImpossibleInputError {
  return new ImpossibleInputError(
    "too-large",
    `The items' ${measure} add up to more than a number can hold: write them in a larger unit.`,
    "items",
  );
}
