import type { CurvePoint } from "./curve-figure";

/** One measured state of the vehicle: the mean curve of its runs and their peaks. */
export interface MeasuredState {
  /** The mean corrected power at the hubs, in kW, in order of rising speed. */
  readonly powerKw: readonly CurvePoint[];
  readonly peakPowerKw: number;
  readonly peakPowerRpm: number;
  readonly peakTorqueNm: number;
  readonly peakTorqueRpm: number;
  readonly runs: number;
  readonly spreadPct: number;
  readonly barometerKPa: number;
  readonly airTempC: number;
  readonly relativeHumidityPct: number;
  readonly factor: number;
  readonly measuredOn: string;
}

/** Before and after, and whether the promise is kept; figures are corrected and at the hubs. */
export interface DynoFigures {
  readonly at: "hubs" | "wheels";
  readonly correction: string;
  readonly smoothingRpm: number;
  readonly baseline?: MeasuredState;
  readonly proof: MeasuredState;
  readonly promise?: { readonly lowKw: number; readonly highKw: number };
  /** One sentence: kept, missed or not demonstrated, with its numbers. */
  readonly verdict: string;
  /** Why before and after must not be set against each other, in sentences; empty where they may. */
  readonly obstacles?: readonly string[];
}
