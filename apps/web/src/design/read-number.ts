export type ReadNumber =
  | { readonly ok: true; readonly text: string; readonly value: number }
  | { readonly ok: false; readonly sentence: string };

const PLAIN = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/;
const GROUPED = /^[+-]?\d{1,3}(?:[ ,\u00a0\u202f]\d{3})+(?:\.\d*)?$/;

/**
 * Reads a number as people type it: spaces or commas between thousands, a point before decimals.
 * `text` is the same number written plainly, for exact arithmetic; `value` is for comparing and drawing.
 */
export function readNumber(typed: string): ReadNumber {
  const trimmed = typed.trim().replace("\u2212", "-");
  if (trimmed === "") return { ok: false, sentence: "Enter a number." };
  if (!PLAIN.test(trimmed) && !GROUPED.test(trimmed)) {
    return { ok: false, sentence: `“${trimmed}” is not a number: use digits, with a point before decimals.` };
  }
  const text = trimmed.replace(/[ ,\u00a0\u202f+]/g, "");
  return { ok: true, text, value: Number(text) };
}

export interface Limits {
  readonly low?: number;
  readonly high?: number;
}

/** Says whether a typed value is inside its limits; null while there is nothing readable to judge. */
export function limitSentence(typed: string, limits: Limits, unit: string): string | null {
  const read = readNumber(typed);
  if (!read.ok) return null;
  const { low, high } = limits;
  if (low !== undefined && read.value < low) return `Below the limit of ${low} ${unit}.`;
  if (high !== undefined && read.value > high) return `Above the limit of ${high} ${unit}.`;
  return low === undefined && high === undefined ? null : "Within limits.";
}

/** The limits as they stand on the job card: "85 to 95 N·m". */
export function limitRange({ low, high }: Limits, unit: string): string | null {
  if (low !== undefined && high !== undefined) return `${low} to ${high} ${unit}`;
  if (low !== undefined) return `at least ${low} ${unit}`;
  return high === undefined ? null : `at most ${high} ${unit}`;
}
