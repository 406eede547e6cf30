import type { Ambient, BlowerQuestion } from "../air/blower-question";
import type { PowerPlace } from "../driveline/driveline-loss";
import type { Fuel } from "../fuel/fuel-properties";
import type { FuelStage } from "../fuel/fuel-stage";
import type { SpeedCurve } from "../question/speed-curve";
import type { ForecastAssumptions, GivenAssumptions } from "./forecast-assumptions";

export const injectionKinds = ["port", "direct", "port-direct"] as const;
export type InjectionKind = (typeof injectionKinds)[number];

export type PowerCurve = {
  readonly at: PowerPlace;
  /** Speeds rising. At the hubs or wheels a run that was measured, at the crank the maker's rating. */
  readonly points: readonly { readonly speedRpm: number; readonly powerKw: number }[];
};

/** A change of nothing but the calibration, for a turbo-diesel. */
export type CalibrationChange = {
  /** At the crank. */
  readonly torqueRequestNm: SpeedCurve;
  /** Air over burnable air below which it smokes; 1.2 is as rich as the trade goes. */
  readonly smokeLambda: number;
  /** Before the turbine. */
  readonly exhaustLimitC: number;
};

/** A freer exhaust or intake, a calibration or both, for a spark-ignition engine that breathes by itself. */
export type BreathingChange = {
  readonly displacementL: number;
  /** Referred to the density in the manifold; for the fuel. */
  readonly volumetricEfficiency: SpeedCurve;
  /** Air over the baseline's own in the same air; 1 unless said. */
  readonly fillingGain?: SpeedCurve | undefined;
  /** Of the exhaust that is fitted; that of the baseline unless said. */
  readonly backPressureKPaAt6000?: number | undefined;
  /** Of the calibration, in degrees of the crank behind best torque; the baseline's unless said. */
  readonly retardDeg?: number | undefined;
  /** The baseline's unless said. */
  readonly lambda?: number | undefined;
};

/** What gearbox, clutch or controller holds the torque at the crank to, over a range of speeds or everywhere. */
export type TorqueCap = {
  readonly torqueNm: number;
  readonly name?: string | undefined;
  readonly fromRpm?: number | undefined;
  readonly toRpm?: number | undefined;
};

export type ForecastQuestion = {
  readonly baseline: PowerCurve;
  /** Where the answer is told; where the baseline was unless said, so a rating can be told at the hubs with its driveline band. */
  readonly reportAt?: PowerPlace | undefined;
  readonly compressionRatio: number;
  readonly fuel: Fuel;
  readonly injection: InjectionKind;
  /** Exactly one of the three. The blower's ambient is the air of the baseline. */
  readonly blower?: BlowerQuestion | undefined;
  readonly calibrationChange?: CalibrationChange | undefined;
  readonly breathingChange?: BreathingChange | undefined;
  readonly fuelSupply?: { readonly stages: readonly FuelStage[] } | null | undefined;
  readonly torqueCaps?: readonly (number | TorqueCap)[] | undefined;
  readonly hotDay?: Ambient | null | undefined;
  readonly assumptions?: GivenAssumptions | undefined;
};

export const forecastLimits = [
  "air",
  "fuel",
  "torque-cap",
  "blower-speed",
  "charge-temperature",
  "knock",
  "torque-request",
  "smoke",
  "exhaust-temperature",
] as const;
export type ForecastLimit = (typeof forecastLimits)[number];

export type ForecastPoint = {
  readonly speedRpm: number;
  /** All powers at the place of the answer. */
  readonly baselineKw: number;
  readonly lowKw: number;
  readonly expectedKw: number;
  readonly highKw: number;
  /** What gearbox and clutch see, at the expected power. */
  readonly crankTorqueNm: number;
  readonly limit: ForecastLimit;
  /** The limit in words. */
  readonly because: string;
  /** Null for a change of calibration alone. */
  readonly boostKPa: number | null;
  readonly manifoldTempC: number | null;
  readonly sparkRetardDeg: number | null;
  /** For the air the blower moves, or all that is passed; less flows where a cap or a request holds the torque. */
  readonly fuelKgPerH: number;
};

export type ForecastPeak = Pick<ForecastPoint, "speedRpm" | "lowKw" | "expectedKw" | "highKw">;
export type ForecastCurve = { readonly points: readonly ForecastPoint[]; readonly peak: ForecastPeak };

/** By what the engine is changed. */
export const forecastKinds = ["blower", "calibration", "breathing"] as const;
export type ForecastKind = (typeof forecastKinds)[number];

export type Forecast = ForecastCurve & {
  readonly at: PowerPlace;
  readonly kind: ForecastKind;
  /** The same on the site's hot day; null when none was asked. */
  readonly hotDay: ForecastCurve | null;
  readonly assumptions: ForecastAssumptions;
};
