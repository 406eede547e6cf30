export type Spread = {
  readonly count: number;
  readonly lowest: number;
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  readonly highest: number;
};

/**
 * How values lie: the middle one, the middle half and the ends. Null for no values at all.
 *
 * @source  Quantiles by linear interpolation between order statistics at position (n − 1)p + 1: definition 7 of
 *          Hyndman and Fan, "Sample Quantiles in Statistical Packages", The American Statistician 50 (1996),
 *          from memory; the SQL standard's `percentile_cont`, against which the database tests hold it.
 * @valid   Finite values in any order; unit and rounding are the caller's.
 */
export function spread(values: readonly number[]): Spread | null {
  const sorted = values.toSorted((one, other) => one - other);
  const [lowest] = sorted;
  if (lowest === undefined) return null;
  if (sorted.some((value) => !Number.isFinite(value))) throw new RangeError("A spread is of finite values.");
  return {
    count: sorted.length,
    lowest,
    lowerQuartile: quantile(sorted, 0.25),
    median: quantile(sorted, 0.5),
    upperQuartile: quantile(sorted, 0.75),
    highest: sorted.at(-1) ?? lowest,
  };
}

function quantile(sorted: readonly number[], share: number): number {
  const position = (sorted.length - 1) * share;
  const below = sorted[Math.floor(position)] ?? Number.NaN;
  const above = sorted[Math.ceil(position)] ?? Number.NaN;
  return below + (above - below) * (position - Math.floor(position));
}
