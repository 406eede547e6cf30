/** What a job costs, by where the money goes. Labour is the clock; the rest is recorded. */
export const costKinds = ["parts", "labour", "boughtIn", "dyno", "rework", "other"] as const;
export type CostKind = (typeof costKinds)[number];

/** One figure for each kind. */
export type ByKind<Figure> = Readonly<Record<CostKind, Figure>>;

export function byKind<Figure>(figureOf: (kind: CostKind) => Figure): ByKind<Figure> {
  return {
    parts: figureOf("parts"),
    labour: figureOf("labour"),
    boughtIn: figureOf("boughtIn"),
    dyno: figureOf("dyno"),
    rework: figureOf("rework"),
    other: figureOf("other"),
  };
}
