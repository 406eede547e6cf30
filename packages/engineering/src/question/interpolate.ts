type PlotPoint = { readonly x: number; readonly y: number };

/** Linear between points whose x rises; before the first and after the last the end value holds. */
export function interpolate(points: readonly PlotPoint[], x: number): number {
  const after = points.findIndex((point) => point.x >= x);
  const upper = points[after] ?? points.at(-1);
  const lower = points[after - 1];
  if (!upper) throw new RangeError("A curve has at least one point.");
  if (!lower || after < 0) return upper.y;
  return lower.y + ((x - lower.x) / (upper.x - lower.x)) * (upper.y - lower.y);
}
