import type { Encoding, Literal } from "./encoding";
import type { Measure, Measures } from "./measures";
import type { Level, PartQuestion } from "./part-program";
import type { Component } from "./residue";

/** A part with its variables numbered from 1 on and its figures as numbers, which hold them exactly. */
export type SmallPart = {
  readonly encoding: Encoding;
  /** What may not be in for its lead time, as literals that say "not". */
  readonly barred: readonly Literal[];
  /** By variable, what it counts in the first level. */
  readonly first: Float64Array;
  /** What a set of variables, ascending, counts in a level; less is better. */
  readonly rankOf: (level: Level, on: readonly number[]) => readonly number[];
  /** What a variable is in the whole. */
  readonly variableAt: (own: number) => number;
};

const MOST_VARIABLES = 80;

/** Null for a part that is large, or whose figures are beyond what numbers hold exactly. */
export function smallPart(
  part: Component,
  items: number,
  measures: Measures,
  { levels, leadFloor, leadCap }: PartQuestion,
): SmallPart | null {
  if (part.variables.length > MOST_VARIABLES) return null;
  const shown = part.variables.filter((variable) => variable <= items);
  const counted = shown.filter((variable) => variable <= measures.counted).length;
  const figures = (measure: Measure): readonly bigint[] =>
    shown.map((variable) => measures[measure].amounts[variable - 1] ?? 0n);
  const numbers = { price: asNumbers(figures("price")), hours: asNumbers(figures("hours")) };
  const leads = figures("leadDays");
  const leadNumbers = asNumbers(leads.map((lead) => (lead > leadFloor ? lead - leadFloor : 0n)));
  if (!numbers.price || !numbers.hours || !leadNumbers) return null;
  const { price, hours } = numbers;

  const own = new Map(part.variables.map((variable, at) => [variable, at + 1]));
  const local = (literal: Literal): Literal =>
    Math.sign(literal) * (own.get(Math.abs(literal)) ?? Number.NaN);
  const sumOf = (amounts: Float64Array, on: readonly number[]): number =>
    on.reduce((sum, each) => sum + (amounts[each] ?? 0), 0);
  const byLevel = { price, hours, leadDays: leadNumbers, number: price, order: price };
  return {
    encoding: {
      items: shown.length,
      variables: part.variables.length,
      clauses: part.clauses.map(({ origin, literals }) => ({ origin, literals: literals.map(local) })),
      sums: part.sums.map((sum) => ({
        ...sum,
        terms: sum.terms.map(({ literal, weight }) => ({ literal: local(literal), weight })),
      })),
    },
    barred: leadCap === null ? [] : leads.flatMap((lead, at) => (lead > leadCap ? [-(at + 1)] : [])),
    first: byLevel[levels[0] ?? "price"],
    rankOf(level, on) {
      if (level === "price" || level === "hours") return [sumOf(byLevel[level], on)];
      if (level === "leadDays") return [Math.max(0, ...on.map((each) => leadNumbers[each] ?? 0))];
      const among = on.filter((each) => each <= counted);
      return level === "number" ? [among.length] : [...among, counted + 1];
    },
    variableAt: (each) => part.variables[each - 1] ?? Number.NaN,
  };
}

/** Figures by their place from 1 on, of sums that stay exact; null when they do not. */
function asNumbers(amounts: readonly bigint[]): Float64Array | null {
  const numbers = new Float64Array(MOST_VARIABLES + 1);
  let sum = 0;
  for (const [at, amount] of amounts.entries()) {
    numbers[at + 1] = Number(amount);
    sum += Number(amount);
  }
  return sum <= Number.MAX_SAFE_INTEGER ? numbers : null;
}
