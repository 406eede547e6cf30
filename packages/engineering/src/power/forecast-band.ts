/** How far each uncertain figure is from the expected one. */
export type Deviation = {
  readonly baseline: number;
  readonly air: number;
  readonly retardDeg: number;
  readonly mesh: number;
  readonly dragKw: number;
  readonly lambda: number;
  readonly exhaustC: number;
};

/** How far each may be off; one that is absent is sure. */
export type Spread = { readonly [Name in keyof Deviation]?: number | undefined };

export const asExpected: Deviation = {
  baseline: 0,
  air: 0,
  retardDeg: 0,
  mesh: 0,
  dragKw: 0,
  lambda: 0,
  exhaustC: 0,
};

// The keys of a constant object are its names.
const uncertainties = Object.keys(asExpected) as readonly (keyof Deviation)[];

export type Band = { readonly lowKw: number; readonly expectedKw: number; readonly highKw: number };

/**
 * The band of a power that depends on several uncertain figures: each moved alone to either side by its spread, the
 * moves added as independent, and never beyond what all of them together could do.
 *
 * @source  Root of the sum of squares of independent deviations (propagation of uncertainty, GUM, first order).
 */
export function forecastBand(power: (off: Deviation) => number, spread: Spread): Band {
  const expectedKw = power(asExpected);
  // One object of each kind, moved and put back: a band is asked for at every speed, twice.
  const off = { ...asExpected };
  const worst = { ...asExpected };
  const best = { ...asExpected };
  let below = 0;
  let above = 0;
  for (const name of uncertainties) {
    const by = spread[name];
    if (!by) continue;
    off[name] = by;
    const plus = power(off);
    off[name] = -by;
    const minus = power(off);
    off[name] = 0;
    below += Math.max(0, expectedKw - Math.min(plus, minus)) ** 2;
    above += Math.max(0, Math.max(plus, minus) - expectedKw) ** 2;
    best[name] = plus >= minus ? by : -by;
    worst[name] = -best[name];
  }
  return {
    lowKw: Math.min(expectedKw, Math.max(expectedKw - Math.sqrt(below), power(worst))),
    expectedKw,
    highKw: Math.max(expectedKw, Math.min(expectedKw + Math.sqrt(above), power(best))),
  };
}
