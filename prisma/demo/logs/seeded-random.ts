export interface SeededRandom {
  /** Even, in [0, 1). */
  readonly next: () => number;
  /** Normal, mean 0 and deviation 1. */
  readonly normal: () => number;
}

/**
 * The same seed gives the same numbers on every machine.
 *
 * @source mulberry32, a public-domain generator with 32 bits of state (from memory); Box and Muller, 1958.
 */
export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}
