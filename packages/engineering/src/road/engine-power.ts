import type { PowerPoint } from "./acceleration-question";

/** Full-load power over engine speed, linear between its points. */
export type EnginePower = {
  readonly lowestRpm: number;
  readonly highestRpm: number;
  /** Speed of greatest torque. */
  readonly torquePeakRpm: number;
  /** In kW. Below the lowest speed torque holds; above the highest power holds. */
  at(speedRpm: number): number;
  /** Speeds at which the slope changes. */
  readonly knotsRpm: readonly number[];
};

/** The curve made ready for many look-ups. A first point at rest, without power, says nothing and is left out. */
export function enginePower(curve: readonly PowerPoint[]): EnginePower {
  const points = curve.filter(({ speedRpm }) => speedRpm > 0);
  const speeds = points.map(({ speedRpm }) => speedRpm);
  const powers = points.map(({ powerKw }) => powerKw);
  const [lowestRpm = 0] = speeds;
  const [lowestKw = 0] = powers;
  const highestRpm = speeds.at(-1) ?? 0;
  const highestKw = powers.at(-1) ?? 0;
  const pieceAt = pieces(speeds, highestRpm);
  const at = (speedRpm: number): number => {
    if (speedRpm <= lowestRpm) return (lowestKw * speedRpm) / lowestRpm;
    if (speedRpm >= highestRpm) return highestKw;
    const below = pieceAt(speedRpm);
    const fromRpm = speeds[below] ?? lowestRpm;
    const fromKw = powers[below] ?? lowestKw;
    const share = (speedRpm - fromRpm) / ((speeds[below + 1] ?? highestRpm) - fromRpm);
    return fromKw + share * ((powers[below + 1] ?? highestKw) - fromKw);
  };
  // Power is a straight line between points, so torque has no peak inside.
  const torquePeakRpm = speeds.reduce(
    (best, speed) => (at(speed) / speed > at(best) / best ? speed : best),
    lowestRpm,
  );
  return { lowestRpm, highestRpm, torquePeakRpm, at, knotsRpm: speeds };
}

/** The point below a speed. A run asks for speeds that hardly differ, so the piece found last is tried first. */
function pieces(speeds: readonly number[], highestRpm: number): (speedRpm: number) => number {
  let last = 0;
  return (speedRpm) => {
    if ((speeds[last] ?? highestRpm) < speedRpm && speedRpm <= (speeds[last + 1] ?? 0)) return last;
    let [below, upper] = [0, speeds.length - 1];
    while (upper - below > 1) {
      const middle = (below + upper) >> 1;
      if ((speeds[middle] ?? highestRpm) < speedRpm) below = middle;
      else upper = middle;
    }
    last = below;
    return below;
  };
}

/**
 * Engine speed at which the next gear begins to push harder than this one, in rpm; the highest speed
 * where it never does. `step` is the next ratio over this one, `next` the power in that gear.
 */
export function shiftSpeed(power: EnginePower, next: EnginePower, step: number): number {
  const tolerance = 1e-9 * Math.max(...power.knotsRpm.map(power.at));
  const gain = (speedRpm: number) => next.at(speedRpm * step) - power.at(speedRpm);
  const knots = [...power.knotsRpm, ...next.knotsRpm.map((speed) => speed / step)]
    .filter((speed) => speed >= power.lowestRpm && speed <= power.highestRpm)
    .sort((a, b) => b - a);
  let above = power.highestRpm;
  if (gain(above) <= tolerance) return above;
  for (const below of knots) {
    const [high, low] = [gain(above), gain(below)];
    if (low <= tolerance) return high === low ? below : below + ((above - below) * -low) / (high - low);
    above = below;
  }
  return above;
}
