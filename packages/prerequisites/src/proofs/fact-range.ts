import { compareDecimals, exactDecimal, ImpossibleInputError, type WrittenDecimal } from "@buildproof/units";

/** What a fact may be on the vehicles a proof speaks of: one value, one of some, or anything between two, both included. */
export type FactRange =
  | WrittenDecimal
  | { readonly oneOf: readonly WrittenDecimal[] }
  | { readonly from: WrittenDecimal; readonly to: WrittenDecimal };

/** By fact; a missing fact is 0. */
export type FactRanges = Readonly<Record<string, FactRange>>;

/**
 * Enough values of a range, rising, that every rule asking "at least …" with one of these thresholds is
 * answered on them as on the whole range.
 *
 * @throws ImpossibleInputError for a range in which there is nothing.
 */
export function tellingValues(
  fact: string,
  range: FactRange,
  thresholds: readonly WrittenDecimal[],
): readonly WrittenDecimal[] {
  if (typeof range !== "object") return [range];
  const values = "oneOf" in range ? range.oneOf : [range.from, ...thresholds.filter(isWithin(range))];
  const sorted = [...values].sort(rising);
  const isEmpty = sorted.length === 0 || ("from" in range && rising(range.from, range.to) > 0);
  if (isEmpty) {
    throw new ImpossibleInputError(
      "empty-range",
      `No value of "${fact}" is left: give at least one, the lower limit first.`,
      `facts.${fact}`,
    );
  }
  return sorted.filter((value, at) => at === 0 || rising(sorted[at - 1] ?? value, value) < 0);
}

export function rising(a: WrittenDecimal, b: WrittenDecimal): number {
  return compareDecimals(exactDecimal(a), exactDecimal(b));
}

function isWithin({ from, to }: { readonly from: WrittenDecimal; readonly to: WrittenDecimal }) {
  return (value: WrittenDecimal): boolean => rising(value, from) > 0 && rising(value, to) <= 0;
}
