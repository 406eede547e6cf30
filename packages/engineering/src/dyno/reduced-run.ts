import type { Result } from "@buildproof/units";
import type { DriveTrace } from "./drive-trace";
import type { RunChannel, RunRow } from "./run-row";

/** How a log becomes a curve. */
export type RunSettings = {
  /** Multiplies observed power and torque; 1 leaves them as observed. */
  readonly factor: number;
  /** Whether the code allows the correction under these conditions (Correction.valid); default true. */
  readonly correctionValid?: boolean | undefined;
  /** Width of the moving average; default 200 rpm. 0 switches it off. */
  readonly smoothingRpm?: number | undefined;
  /** Distance of the points; default 50 rpm. */
  readonly gridRpm?: number | undefined;
  /** Rows outside are excluded; default everything. */
  readonly fromRpm?: number | undefined;
  readonly toRpm?: number | undefined;
};

/** One point of the common grid. Torque is always referred to engine speed. */
export type RunPoint = {
  readonly engineRpm: number;
  readonly observedPowerKw: number;
  readonly observedTorqueNm: number;
  readonly correctedPowerKw: number;
  readonly correctedTorqueNm: number;
} & { readonly [channel in RunChannel]: number | null };

export type Peak = { readonly engineRpm: number; readonly value: number };

export type ChannelExtremes = { readonly least: Peak; readonly greatest: Peak };

/** Why a row took no part in the curve. */
export const exclusionReasons = [
  "not-a-number",
  "speed-spike",
  "not-driving",
  "outside-sweep",
  "outside-band",
] as const;
export type ExclusionReason = (typeof exclusionReasons)[number];
export type Exclusions = { readonly [reason in ExclusionReason]: number };

export type RunWarning =
  | { readonly code: "power-and-torque-disagree"; readonly ratio: number; readonly likely: DisagreementCause }
  | { readonly code: "gap-in-speed"; readonly fromRpm: number; readonly toRpm: number }
  | { readonly code: "time-goes-back"; readonly rows: number }
  | { readonly code: "speed-stands-still"; readonly atRpm: number; readonly seconds: number }
  | { readonly code: "rises-more-than-once"; readonly fromRpm: number; readonly toRpm: number };

export type DisagreementCause =
  | "power-in-hp"
  | "power-in-ps-or-torque-in-lbft"
  | "torque-at-another-speed"
  | "channels-do-not-belong-together";

export type ReducedRun = {
  readonly points: readonly RunPoint[];
  readonly peakPower: Peak;
  readonly peakTorque: Peak;
  readonly observedPeakPower: Peak;
  readonly channels: { readonly [channel in RunChannel]: ChannelExtremes | null };
  /** Null where the log carries no speed of the hubs. */
  readonly drive: DriveTrace | null;
  readonly factor: number;
  readonly correctionValid: boolean;
  readonly smoothingRpm: number;
  readonly gridRpm: number;
  readonly durationS: number;
  /** Mean rise of engine speed over the sweep. */
  readonly rampRpmPerS: number;
  readonly rowsRead: number;
  readonly rowsUsed: number;
  readonly excluded: Exclusions;
  readonly warnings: readonly RunWarning[];
};

export type RunRefusal =
  | { readonly code: "no-rows" }
  | { readonly code: "no-power-or-torque" }
  | { readonly code: "no-usable-rows"; readonly excluded: Exclusions }
  | { readonly code: "sweep-too-short"; readonly fromRpm: number; readonly toRpm: number }
  | { readonly code: "speed-falls"; readonly fromRpm: number; readonly toRpm: number }
  | { readonly code: "speed-not-in-rpm"; readonly greatest: number }
  | {
      readonly code: "channel-in-another-unit";
      readonly channel: RunChannel;
      readonly least: number;
      readonly greatest: number;
    };

/** Takes rows one at a time, so that a long log is never held in memory. */
export type RunAccumulator = {
  readonly add: (row: RunRow) => void;
  readonly finish: () => Result<ReducedRun, RunRefusal>;
};
