import type { SeededRandom } from "./seeded-random";

/** An id in the form of UUID version 7 (RFC 9562, 5.7): milliseconds first, then bits from the seed. */
export function timeOrderedId(at: Date, random: SeededRandom): string {
  const time = at.getTime().toString(16).padStart(12, "0");
  const bits = () => random.integer(0, 0xffff).toString(16).padStart(4, "0");
  const versioned = `7${bits().slice(1)}`;
  const variant = (0x8000 | random.integer(0, 0x3fff)).toString(16);
  return `${time.slice(0, 8)}-${time.slice(8)}-${versioned}-${variant}-${bits()}${bits()}${bits()}`;
}
