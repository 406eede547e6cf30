/** One point of a corrected curve, on the common engine-speed grid. */
export interface CurvePoint {
  readonly engineRpm: number;
  readonly powerKw: number;
  readonly torqueNm: number;
}

/** A run, or the mean of a session's runs, as it is overlaid. */
export interface CurveRun {
  readonly id: string;
  /** Said beside its line: "Baseline", "Proof". */
  readonly label: string;
  /** Told apart by pattern, never by colour alone; by order when left out. */
  readonly pattern?: LinePattern;
  readonly points: readonly CurvePoint[];
  /** A forecast carries its range at the same speeds: it is told with every figure of it. */
  readonly range?: readonly CurveRange[];
}

export interface CurveRange {
  readonly engineRpm: number;
  readonly powerKw: { readonly low: number; readonly high: number };
  readonly torqueNm: { readonly low: number; readonly high: number };
}

export type LinePattern = "solid" | "dashed" | "dotted" | "dash-dot" | "long-dash";

/** A forecast is never shown without its band. */
export interface ForecastBand {
  readonly label: string;
  readonly quantity: "power" | "torque";
  readonly points: readonly { readonly engineRpm: number; readonly low: number; readonly high: number }[];
}

export interface CurveLimit {
  readonly label: string;
  readonly value: number;
}

/** A second band under the curves: boost, mixture, fuel pressure, intake temperature. */
export interface ChannelStrip {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  readonly limits?: readonly CurveLimit[];
  readonly series: readonly {
    readonly runId: string;
    readonly points: readonly { readonly engineRpm: number; readonly value: number }[];
  }[];
}
