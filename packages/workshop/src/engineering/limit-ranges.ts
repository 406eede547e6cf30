import type { ForecastLimit, ForecastPoint } from "@buildproof/engineering";

/** A stretch of engine speeds over which one thing holds the power. */
export type LimitRange = {
  readonly fromRpm: number;
  readonly toRpm: number;
  readonly limit: ForecastLimit;
  /** The stretch and the limit in a few words, such as "fuel from 5,100 rpm". */
  readonly headline: string;
  readonly because: string;
};

const words: Readonly<Record<ForecastLimit, string>> = {
  air: "air",
  fuel: "fuel",
  "torque-cap": "torque limit",
  "blower-speed": "blower speed",
  "charge-temperature": "charge temperature",
  knock: "knock",
  "torque-request": "torque request",
  smoke: "smoke",
  "exhaust-temperature": "exhaust temperature",
};

/** What limits where: neighbouring speeds with the same limit together, in the order of speed. */
export function limitRanges(points: readonly ForecastPoint[]): readonly LimitRange[] {
  const ranges: Omit<LimitRange, "headline">[] = [];
  for (const { speedRpm, limit, because } of points) {
    const last = ranges.at(-1);
    if (last?.limit === limit) ranges[ranges.length - 1] = { ...last, toRpm: speedRpm };
    else ranges.push({ fromRpm: speedRpm, toRpm: speedRpm, limit, because });
  }
  return ranges.map((range, at) => ({
    ...range,
    headline: `${words[range.limit]} ${stretch(range, at === 0, at === ranges.length - 1)}`,
  }));
}

function stretch(
  { fromRpm, toRpm }: { readonly fromRpm: number; readonly toRpm: number },
  isFirst: boolean,
  isLast: boolean,
): string {
  if (isFirst && isLast) return "at every speed";
  if (isFirst) return `to ${rpm(toRpm)}`;
  if (isLast) return `from ${rpm(fromRpm)}`;
  return fromRpm === toRpm ? `at ${rpm(fromRpm)}` : `from ${rpm(fromRpm)} to ${rpm(toRpm)}`;
}

export function rpm(speedRpm: number): string {
  return `${Math.round(speedRpm).toLocaleString("en-AU")} rpm`;
}
