import type { SpeedCurve } from "../question/speed-curve";
import type { Fuel } from "./fuel-properties";

export const fuelPaths = ["series", "port", "direct"] as const;
/** Everything in series feeds both branches; the port and the direct branch feed the cylinders side by side. */
export type FuelPath = (typeof fuelPaths)[number];

export const fuelStageKinds = [
  "tank-pump",
  "high-pressure-pump",
  "port-injectors",
  "direct-injectors",
] as const;
export type FuelStageKind = (typeof fuelStageKinds)[number];

type Placed = { readonly path?: FuelPath | undefined };

export type TankPump = Placed & {
  readonly kind: "tank-pump";
  /** The maker's curve at the voltage the pump really gets under load, pressure rising. */
  readonly points: readonly { readonly pressureKPa: number; readonly flowLPerH: number }[];
  readonly systemPressureKPa: number;
};

export type HighPressurePump = Placed & {
  readonly kind: "high-pressure-pump";
  /** All strokes of one turn of the cam. */
  readonly displacementCm3PerCamRev: number;
  /** Turns of the cam per turn of the crank; 0.5 unless said. */
  readonly camRatio?: number | undefined;
  /** At the rated rail pressure: a figure, or a curve over engine speed, because it falls with speed. */
  readonly volumetricEfficiency: SpeedCurve;
  /** Where the rail is driven higher or lower than the efficiency was told at. */
  readonly railPressure?: PumpPressure | undefined;
};

/** Leakage past the plunger and the fuel's own give take more of each stroke as the rail pressure rises. */
export type PumpPressure = {
  readonly railKPa: number;
  /** At which the volumetric efficiency was told. */
  readonly ratedKPa: number;
  /** Of the stroke; about 0.7 to 1 by compression alone. */
  readonly lossPctPer10MPa: number;
};

export type PortInjectors = Placed & {
  readonly kind: "port-injectors";
  readonly count: number;
  readonly staticFlowCm3PerMin: number;
  readonly ratedPressureKPa: number;
  /** Both gauge. */
  readonly railKPa: number;
  readonly manifoldKPa: number;
  readonly dutyLimit: number;
};

export type DirectInjectors = Placed & {
  readonly kind: "direct-injectors";
  readonly count: number;
  readonly staticFlowGPerS: number;
  readonly ratedPressureKPa: number;
  readonly railKPa: number;
  /** Mean cylinder pressure while the injector is open. */
  readonly cylinderKPa: number;
  /** Crank degrees in which injection helps. */
  readonly windowDeg: number;
  readonly deadTimeMs: number;
};

export type FuelStage = TankPump | HighPressurePump | PortInjectors | DirectInjectors;

export type FuelSupplyQuestion = {
  readonly fuel: Fuel;
  /** Of the engine. */
  readonly speedRpm: number;
  readonly stages: readonly FuelStage[];
};
