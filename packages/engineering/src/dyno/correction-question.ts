/** The codes a corrected figure may be named after, and the editions whose text differs. */
export const correctionStandards = ["SAE_J1349", "UN_R85", "DIN_70020", "SAE_J607"] as const;
export type CorrectionStandard = (typeof correctionStandards)[number];

export const correctionEditions = ["JUN1990", "AUG2004", "R85", "ISO1585"] as const;
export type CorrectionEdition = (typeof correctionEditions)[number];

export const ignitions = ["spark", "compression"] as const;
export type Ignition = (typeof ignitions)[number];

export const aspirations = ["natural", "mechanical", "turbo", "turbo-cooled"] as const;
export type Aspiration = (typeof aspirations)[number];

/** What the dyno operator knows: the code asked for, the engine, and the air at the intake. */
export type CorrectionQuestion = {
  readonly standard: CorrectionStandard;
  /** Default AUG2004 for SAE_J1349 and R85 for UN_R85; the other codes have none. */
  readonly edition?: CorrectionEdition | undefined;
  readonly ignition: Ignition;
  readonly aspiration: Aspiration;
  /** Station pressure: what a barometer in the cell reads, not the figure reduced to sea level. */
  readonly barometerKPa: number;
  /** At the intake inlet, not in the room. */
  readonly airTempC: number;
  /** Exactly one of the two. */
  readonly relativeHumidityPct?: number | undefined;
  readonly vapourPressureKPa?: number | undefined;
  /** Compression ignition only: fuel per litre of displacement and working cycle. */
  readonly fuelMgPerLPerCycle?: number | undefined;
  /** Compression ignition only: charge pressure over ambient pressure, absolute; 1 without boost. */
  readonly boostRatio?: number | undefined;
  readonly observedPowerKw?: number | undefined;
  /** SAE_J1349 only: replaces the edition's assumed 85 %. */
  readonly mechanicalEfficiency?: number | undefined;
};

export type CorrectionWarning =
  | "superseded"
  | "temperature-out-of-range"
  | "dry-pressure-out-of-range"
  | "factor-out-of-range"
  | "not-for-compression-ignition"
  | "boost-control-may-overcorrect"
  | "barometer-implausible"
  | "supercooled-vapour"
  | "fuel-figures-not-used";

export type Correction = {
  readonly standard: CorrectionStandard;
  readonly edition: CorrectionEdition | null;
  /** Multiplies observed power and torque. */
  readonly factor: number;
  readonly vapourPressureKPa: number;
  readonly dryPressureKPa: number;
  /** Whether the code allows its name beside the corrected figure under these conditions. */
  readonly valid: boolean;
  readonly warnings: readonly CorrectionWarning[];
  readonly observedPowerKw: number | null;
  readonly correctedPowerKw: number | null;
};
