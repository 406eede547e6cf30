export interface WaterfallStep {
  readonly id: string;
  readonly label: string;
  /** Signed minor units: what it adds to, or takes from, the amount so far. */
  readonly minor: number;
  /** The jobs and clock entries behind it. */
  readonly href?: string;
  readonly note?: string;
}

export interface WaterfallBar {
  readonly kind: "total" | "gain" | "loss";
  readonly minor: number;
  /** Left end and width as parts of the drawing's width. */
  readonly left: number;
  readonly width: number;
}

export interface Waterfall {
  readonly start: WaterfallBar;
  readonly steps: readonly WaterfallBar[];
  readonly end: WaterfallBar;
  /** Where nothing is. */
  readonly zero: number;
}

/** Bars of an amount on its way from its first value through its steps to its last, all on one scale with zero in it. */
export function waterfallBars(startMinor: number, steps: readonly { readonly minor: number }[]): Waterfall {
  const levels = [startMinor];
  for (const step of steps) levels.push((levels.at(-1) ?? 0) + step.minor);
  const low = Math.min(0, ...levels);
  const span = Math.max(0, ...levels) - low || 1;
  const at = (minor: number) => (minor - low) / span;
  const bar = (from: number, to: number) => ({
    left: at(Math.min(from, to)),
    width: at(Math.max(from, to)) - at(Math.min(from, to)),
  });
  const endMinor = levels.at(-1) ?? startMinor;
  return {
    start: { kind: "total", minor: startMinor, ...bar(0, startMinor) },
    steps: steps.map((step, index) => ({
      kind: step.minor < 0 ? "loss" : "gain",
      minor: step.minor,
      ...bar(levels[index] ?? 0, levels[index + 1] ?? 0),
    })),
    end: { kind: "total", minor: endMinor, ...bar(0, endMinor) },
    zero: at(0),
  };
}
