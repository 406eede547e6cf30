const LONGEST_MS = 600_000;

export const WITHIN_SENTENCE = `Write "within" as whole milliseconds from 1 to ${LONGEST_MS}, such as 10000.`;

/** The time limit of a search as it is written on the command line or in an address; null when it is none. */
export function readWithin(written: string): number | null {
  if (!/^\d{1,9}$/.test(written)) return null;
  const withinMs = Number(written);
  return withinMs >= 1 && withinMs <= LONGEST_MS ? withinMs : null;
}
