type Bracket = { readonly low: number; readonly high: number };

type Root =
  | { readonly found: true; readonly at: number }
  | { readonly found: false; readonly bracket: Bracket };

const MOST_STEPS = 100;

/**
 * Where a function changes sign between two ends, by Chandrupatla's method: inverse quadratic steps where
 * three points allow one, halving where they do not, the root always held between the ends.
 *
 * @source  T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145–149; the rule from memory.
 * @valid   Continuous function with one change of sign. Without a change of sign, or with a value that is not a
 *          number, nothing is found and the bracket is told.
 */
export function rootInBracket(value: (at: number) => number, bracket: Bracket, tolerance: number): Root {
  let newest = { at: bracket.high, is: value(bracket.high) };
  let opposite = { at: bracket.low, is: value(bracket.low) };
  if (!(newest.is * opposite.is <= 0)) return { found: false, bracket };
  let step = 0.5;
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const best = Math.abs(newest.is) < Math.abs(opposite.is) ? newest : opposite;
    const width = Math.abs(newest.at - opposite.at);
    if (best.is === 0 || width <= tolerance) return { found: true, at: best.at };
    const least = (0.5 * tolerance) / width;
    const at = newest.at + Math.min(1 - least, Math.max(least, step)) * (opposite.at - newest.at);
    const next = { at, is: value(at) };
    const sameSide = Math.sign(next.is) === Math.sign(newest.is);
    const before = sameSide ? newest : opposite;
    if (!sameSide) opposite = newest;
    newest = next;
    step = nextStep(newest, opposite, before);
  }
  return {
    found: false,
    bracket: { low: Math.min(newest.at, opposite.at), high: Math.max(newest.at, opposite.at) },
  };
}

type Sample = { readonly at: number; readonly is: number };

/** The inverse quadratic step through three samples where that is safe, else the middle. */
function nextStep(newest: Sample, opposite: Sample, before: Sample): number {
  const place = (newest.at - opposite.at) / (before.at - opposite.at);
  const rise = (newest.is - opposite.is) / (before.is - opposite.is);
  if (!(rise ** 2 < place && (1 - rise) ** 2 < 1 - place)) return 0.5;
  const chord = (newest.is / (opposite.is - newest.is)) * (before.is / (opposite.is - before.is));
  const bend = (newest.is / (before.is - newest.is)) * (opposite.is / (before.is - opposite.is));
  return chord + ((before.at - newest.at) / (opposite.at - newest.at)) * bend;
}
