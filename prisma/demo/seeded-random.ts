/** Random numbers that come out the same for the same seed. */
export type SeededRandom = {
  /** At least 0, less than 1. */
  readonly next: () => number;
  /** A whole number, both ends inclusive. */
  readonly integer: (low: number, high: number) => number;
  readonly between: (low: number, high: number) => number;
  readonly chance: (probability: number) => boolean;
  readonly normal: (mean: number, deviation: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
  /** A stream of its own: drawing from it leaves this one where it is. */
  readonly fork: (label: string) => SeededRandom;
};

export function seededRandom(seed: string): SeededRandom {
  const next = smallFastCounter(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  const integer = (low: number, high: number) => Math.floor(between(low, high + 1));
  return {
    next,
    between,
    integer,
    chance: (probability) => next() < probability,
    // Twelve uniform draws have variance 1: near enough to a bell for a demo, and with no far tail.
    normal: (mean, deviation) => {
      let sum = -6;
      for (let draw = 0; draw < 12; draw += 1) sum += next();
      return mean + deviation * sum;
    },
    pick: <T>(list: readonly T[]) => {
      const picked = list[integer(0, list.length - 1)];
      if (picked === undefined) throw new Error("nothing to pick from");
      return picked;
    },
    fork: (label) => seededRandom(`${seed}/${label}`),
  };
}

/** The sfc32 generator (public domain), seeded with a 128-bit FNV-like hash of the text. */
function smallFastCounter(seed: string): () => number {
  let [a, b, c, d] = [hash(seed, 1), hash(seed, 2), hash(seed, 3), 1];
  const next = () => {
    const sum = (((a + b) | 0) + d) | 0;
    d = (d + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let warmUp = 0; warmUp < 15; warmUp += 1) next();
  return next;
}

function hash(text: string, salt: number): number {
  let value = Math.imul(salt, 0x9e3779b1) ^ 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  }
  return value ^ (value >>> 15);
}
