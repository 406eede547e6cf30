/** Which wheels push; load moves to the rear under acceleration. */
export const drivenAxles = ["front", "rear", "all"] as const;
export type DrivenAxles = (typeof drivenAxles)[number];

export type PowerPoint = { readonly speedRpm: number; readonly powerKw: number };

/** Gears count from 1. */
export type GearCurve = { readonly gear: number; readonly curve: readonly PowerPoint[] };

/** A vehicle, a road, and the speeds and distances asked for. */
export type AccelerationQuestion = {
  /** With driver and load. */
  readonly massKg: number;
  /** Effective over real mass: wheels, shafts and engine have to be spun up too. */
  readonly rotatingFactor: number;
  readonly tyre: string;
  /** Ratios from first to top. */
  readonly gears: readonly number[];
  readonly finalDrive: number;
  readonly shiftTimeS: number;
  /** From the power of the curve to the tyre. */
  readonly drivelineEfficiency: number;
  readonly rollingCoefficient: number;
  readonly dragAreaM2: number;
  readonly airDensityKgPerM3: number;
  /** Rise over run; negative is downhill. */
  readonly slopePct: number;
  readonly drivenAxles: DrivenAxles;
  readonly gripCoefficient: number;
  /** Full load; linear in power between the points. */
  readonly curve: readonly PowerPoint[];
  /** Full load in gears in which a controller holds the torque; each once. */
  readonly gearCurves?: readonly GearCurve[] | undefined;
  readonly targetsKmh: readonly number[];
  readonly distancesM: readonly number[];
  /** Way from rest after which the clock starts; 0.3048 m at a drag strip. Default 0. */
  readonly rollOutM?: number | undefined;
  /** Against the direction of travel; negative is from behind. Default 0. */
  readonly headwindKmh?: number | undefined;
  /** Share of the mass on the front axle at rest. Default 50. */
  readonly frontLoadPct?: number | undefined;
  /** Height of the centre of gravity over wheelbase. Default 0.55 m over 2.7 m. */
  readonly gravityHeightToWheelbase?: number | undefined;
  /** Where clutch or converter holds the engine until the road catches up. Default: the speed of greatest torque. */
  readonly launchSpeedRpm?: number | undefined;
};

/** What holds the vehicle back at a moment. */
export type RoadLimit = "clutch" | "grip" | "engine" | "shift" | "rev-limit";

export type TracePoint = {
  /** From rest. */
  readonly s: number;
  readonly kmh: number;
  readonly m: number;
  readonly gear: number;
  readonly engineRpm: number;
  readonly driveN: number;
  readonly limit: RoadLimit;
};

export type RoadPhase = { readonly fromS: number; readonly toS: number; readonly limit: RoadLimit };

/** Why the run was over. */
export type RunEnd = "all-reached" | "top-speed" | "rev-limit" | "cannot-start" | "too-long";
