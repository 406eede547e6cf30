import type { LinePattern } from "./curve-types";

const DASHES: Record<LinePattern, string | undefined> = {
  solid: undefined,
  dashed: "7 4",
  dotted: "1.5 4",
  "dash-dot": "9 4 1.5 4",
  "long-dash": "16 5",
};

/** What the stroke does, for SVG's `stroke-dasharray`. */
export function dashesOf(pattern: LinePattern): string | undefined {
  return DASHES[pattern];
}

const BETWEEN: readonly LinePattern[] = ["dash-dot", "dotted", "long-dash"];

/**
 * The pattern of a run that names none: the first dashed, as what was; the last solid, as what is; those
 * between by turns. Past five runs the label alone tells them apart.
 */
export function patternOf(index: number, count: number): LinePattern {
  if (index === count - 1) return "solid";
  if (index === 0) return "dashed";
  return BETWEEN[(index - 1) % BETWEEN.length] ?? "dotted";
}
