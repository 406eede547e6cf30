/** A value at an engine speed. */
export type Knot = readonly [speedRpm: number, value: number];

/**
 * A curve through the knots without corners; level outside them.
 *
 * @source Catmull and Rom, 1974: cubic through evenly weighted neighbours (from memory).
 */
export function smoothCurve(knots: readonly Knot[]): (speedRpm: number) => number {
  const knot = (index: number): Knot => knots[Math.min(Math.max(index, 0), knots.length - 1)] ?? [0, 0];
  return (speedRpm) => {
    const after = knots.findIndex(([speed]) => speed >= speedRpm);
    if (after === 0) return knot(0)[1];
    if (after === -1) return knot(knots.length - 1)[1];
    const [[x1, y1], [x2, y2]] = [knot(after - 1), knot(after)];
    const slope = (before: Knot, behind: Knot) => (behind[1] - before[1]) / (behind[0] - before[0]);
    const width = x2 - x1;
    const m1 = slope(knot(after - 2), knot(after)) * width;
    const m2 = slope(knot(after - 1), knot(after + 1)) * width;
    const t = (speedRpm - x1) / width;
    return (
      (2 * t ** 3 - 3 * t ** 2 + 1) * y1 +
      (t ** 3 - 2 * t ** 2 + t) * m1 +
      (3 * t ** 2 - 2 * t ** 3) * y2 +
      (t ** 3 - t ** 2) * m2
    );
  };
}
