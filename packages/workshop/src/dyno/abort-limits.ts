import type { RunChannel } from "@buildproof/engineering";

/** A value of one channel at which the operator lifts, and past which a run is never counted. */
export type AbortLimit = {
  readonly channel: RunChannel;
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  /** `most`: not above the value; `least`: not below it. */
  readonly side: "most" | "least";
  readonly watch: number;
  readonly stop: number;
  /** It holds from this engine speed on: enrichment and rail pressure need the speed to come up. */
  readonly fromRpm: number;
};

/** What no log carries and the operator watches on the dyno itself. */
export type WatchedLimit = { readonly title: string; readonly watch: string; readonly stop: string };

export type LimitedEngine = {
  readonly ignition: "spark" | "compression";
  readonly isBoosted: boolean;
  readonly isDirectInjected: boolean;
};

/**
 * Abort limits during a run, by kind of engine.
 *
 * @source Common practice, no source. The maker's limits and the procedure of the job override all of them.
 */
export function abortLimits(engine: LimitedEngine): readonly AbortLimit[] {
  const lambda = { channel: "lambda", title: "Mixture", unit: "lambda", decimals: 2 } as const;
  const intake = { channel: "intakeTempC", title: "Intake air", unit: "°C", decimals: 0 } as const;
  const rail = { channel: "fuelRailMPa", title: "Fuel rail pressure", unit: "MPa", decimals: 1 } as const;
  const charge = { ...intake, side: "most", watch: 60, stop: 70, fromRpm: 0 } as const;
  if (engine.ignition === "compression") {
    return [{ ...lambda, side: "least", watch: 1.2, stop: 1.15, fromRpm: 0 }, charge];
  }
  const direct: readonly AbortLimit[] = engine.isDirectInjected
    ? [{ ...rail, side: "least", watch: 15, stop: 14, fromRpm: 5_000 }]
    : [];
  return engine.isBoosted
    ? [{ ...lambda, side: "most", watch: 0.83, stop: 0.85, fromRpm: 4_500 }, ...direct, charge]
    : [{ ...lambda, side: "most", watch: 0.9, stop: 0.92, fromRpm: 4_500 }, ...direct, charge];
}

/** @source Common practice, no source; knock and exhaust figures for petrol, exhaust figure for diesel. */
export function watchedLimits({ ignition }: LimitedEngine): readonly WatchedLimit[] {
  const exhaust = ignition === "spark" ? ["900 °C", "950 °C"] : ["700 °C", "720 °C"];
  const knock = { title: "Knock retard, worst cylinder", watch: "2°", stop: "4°, or heard" };
  return [
    ...(ignition === "spark" ? [knock] : []),
    { title: "Exhaust gas", watch: exhaust[0] ?? "", stop: exhaust[1] ?? "" },
    { title: "Gearbox oil", watch: "110 °C", stop: "120 °C" },
    { title: "Coolant", watch: "105 °C", stop: "112 °C" },
    { title: "Engine oil", watch: "125 °C", stop: "140 °C" },
  ];
}

type Judged = { readonly engineRpm: number } & { readonly [channel in RunChannel]: number | null };

export type LimitReading = {
  readonly value: number;
  readonly engineRpm: number;
  readonly grade: "fit" | "watch" | "stop";
};

/** The worst reading of a limit's channel over a curve; null where the log does not carry the channel. */
export function worstReading(limit: AbortLimit, points: readonly Judged[]): LimitReading | null {
  const sign = limit.side === "most" ? 1 : -1;
  let worst: { value: number; engineRpm: number } | null = null;
  for (const point of points) {
    const value = point[limit.channel];
    if (value === null || point.engineRpm < limit.fromRpm) continue;
    if (worst === null || sign * value > sign * worst.value) worst = { value, engineRpm: point.engineRpm };
  }
  if (!worst) return null;
  const isPast = (most: number) => sign * worst.value > sign * most;
  return { ...worst, grade: isPast(limit.stop) ? "stop" : isPast(limit.watch) ? "watch" : "fit" };
}

/** In words, such as "fuel rail pressure 13.2 MPa at 5,800 rpm, where it may not fall below 14.0". */
export function limitSentence(limit: AbortLimit, { value, engineRpm }: LimitReading): string {
  const figure = (number: number) => number.toFixed(limit.decimals);
  const may = limit.side === "most" ? "rise above" : "fall below";
  return `${limit.title} ${figure(value)} ${limit.unit} at ${engineRpm.toLocaleString("en-AU")} rpm, where it may not ${may} ${figure(limit.stop)}.`;
}
