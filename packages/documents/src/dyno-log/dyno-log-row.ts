/** One row of a dyno log. A channel the file does not carry is absent. */
export interface DynoLogRow {
  /** "1" for files without a run column; the run column's own text otherwise. */
  readonly run: string;
  readonly timeS: number;
  readonly engineRpm: number;
  readonly hubRpm?: number;
  readonly hubPowerKw?: number;
  readonly hubTorqueNm?: number;
  readonly boostKPa?: number;
  readonly lambda?: number;
  readonly fuelRailMPa?: number;
  readonly intakeTempC?: number;
}

export type DynoLogRefusalCode =
  | "not-text"
  | "no-header"
  | "missing-columns"
  | "doubled-column"
  | "not-a-number"
  | "not-finite"
  | "wrong-number-of-fields"
  | "unreadable"
  | "no-rows"
  | "too-many-runs"
  | "too-large"
  | "time-goes-backwards";

export interface DynoLogRefusal {
  readonly code: DynoLogRefusalCode;
  /** One sentence that says what is wrong and what to do next. */
  readonly sentence: string;
  /** Line of the file, counted from 1 with the header as line 1. */
  readonly row?: number;
  readonly column?: string;
}

export interface DynoLogRunSummary {
  readonly run: string;
  readonly rows: number;
}

export type DynoLogResult =
  | {
      readonly ok: true;
      readonly rows: number;
      readonly runs: readonly DynoLogRunSummary[];
      readonly columns: readonly string[];
    }
  | { readonly ok: false; readonly refusal: DynoLogRefusal };
