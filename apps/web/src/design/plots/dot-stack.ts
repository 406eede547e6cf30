import { scaleLinear } from "d3-scale";

interface StackedDot {
  readonly id: string;
  /** Part of the drawing's width. */
  readonly across: number;
  /** Which row up from the line: 0 lies on it. */
  readonly row: number;
}

export interface DotStack {
  readonly dots: readonly StackedDot[];
  readonly rows: number;
  readonly ticks: readonly { readonly value: number; readonly across: number }[];
}

/**
 * Places values along a line as dots, each on the lowest row where it touches no other, so that spread and
 * crowding are both seen. `dotShare` is a dot's width as a part of the drawing's.
 */
export function dotStack(
  values: readonly { readonly id: string; readonly value: number }[],
  dotShare: number,
): DotStack {
  const all = values.map((dot) => dot.value);
  const scale = scaleLinear()
    .domain(all.length === 0 ? [0, 1] : padded(Math.min(...all), Math.max(...all)))
    .nice(6)
    .range([0, 1]);
  const rowEnds: number[] = [];
  const dots = values
    .toSorted((a, b) => a.value - b.value)
    .map(({ id, value }) => {
      const across = scale(value);
      const free = rowEnds.findIndex((end) => across - end >= dotShare - 1e-9);
      const row = free === -1 ? rowEnds.length : free;
      rowEnds[row] = across;
      return { id, across, row };
    });
  return {
    dots,
    rows: Math.max(rowEnds.length, 1),
    ticks: scale.ticks(6).map((value) => ({ value, across: scale(value) })),
  };
}

// A scale cannot divide a span that is lost in the digits of its ends.
const LEAST_SPAN = 1e-6;

function padded(low: number, high: number): [number, number] {
  return high - low < LEAST_SPAN ? [low - 1, high + 1] : [low, high];
}
