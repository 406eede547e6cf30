export interface PlotPoint {
  readonly speedRpm: number;
  readonly kw: number;
}

/** Forecast band over a baseline. Every list is in order of rising speed. */
export interface PowerBandPlot {
  readonly baseline: readonly PlotPoint[];
  readonly band: readonly { readonly speedRpm: number; readonly lowKw: number; readonly highKw: number }[];
}
