export interface PlotPoint {
  readonly x: number;
  readonly y: number;
}

/** The value between the two points around `x`, linearly; null outside the series. Points rise in x. */
export function valueAt(points: readonly PlotPoint[], x: number): number | null {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || x < first.x || x > last.x) return null;
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle]?.x ?? x) <= x) low = middle;
    else high = middle;
  }
  const left = points[low];
  const right = points[high];
  if (!left || !right) return null;
  if (right.x === left.x) return left.y;
  return left.y + ((x - left.x) / (right.x - left.x)) * (right.y - left.y);
}

/** Where a series is highest; the first such point where it is flat. */
export function peakOf(points: readonly PlotPoint[]): PlotPoint | null {
  let peak: PlotPoint | null = null;
  for (const point of points) if (peak === null || point.y > peak.y) peak = point;
  return peak;
}
