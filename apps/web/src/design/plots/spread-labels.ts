interface Spread {
  /** Least distance between two neighbours. */
  readonly gap: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Moves labels apart so that none covers another, each as near its line as the others allow, order kept.
 * Where there is not room for all, they share what there is.
 */
export function spreadLabels(wanted: readonly number[], { gap, low, high }: Spread): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const room = wanted.length > 1 ? Math.min(gap, (high - low) / (wanted.length - 1)) : gap;
  const placed = order.map((index) => Math.min(Math.max(wanted[index] ?? low, low), high));
  for (let at = 1; at < placed.length; at++) {
    placed[at] = Math.max(placed[at] ?? low, (placed[at - 1] ?? low) + room);
  }
  let ceiling = high;
  for (let at = placed.length - 1; at >= 0; at--) {
    placed[at] = Math.min(placed[at] ?? high, ceiling);
    ceiling = (placed[at] ?? high) - room;
  }
  const result = new Array<number>(wanted.length);
  order.forEach((index, at) => {
    result[index] = placed[at] ?? low;
  });
  return result;
}
