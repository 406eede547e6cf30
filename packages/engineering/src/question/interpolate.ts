/**
 * Linear between points whose x rises; before the first and after the last the end value holds. The readers take x
 * and y off whatever a point is, so that no curve has to be copied first.
 */
export function interpolate<Point>(
  points: readonly Point[],
  xOf: (point: Point) => number,
  yOf: (point: Point) => number,
  x: number,
): number {
  let lower: Point | undefined;
  for (const upper of points) {
    const end = xOf(upper);
    if (end >= x) {
      if (!lower) return yOf(upper);
      const start = xOf(lower);
      return yOf(lower) + ((x - start) / (end - start)) * (yOf(upper) - yOf(lower));
    }
    lower = upper;
  }
  if (!lower) throw new RangeError("A curve has at least one point.");
  return yOf(lower);
}
