import type { SpeedCurve } from "../question/speed-curve";

export type Engine = {
  readonly displacementL: number;
  /** Referred to the density in the manifold. */
  readonly volumetricEfficiency: SpeedCurve;
  readonly maxSpeedRpm: number;
};

type AnyBlower = {
  readonly adiabaticEfficiency: SpeedCurve;
  readonly maxSpeedRpm: number;
};

export type DisplacementBlower = AnyBlower & {
  readonly kind: "displacement";
  readonly displacementLPerRev: number;
  /** Referred to the density at the blower's inlet; what leaks makes it less than 1 where no leakage area is given. */
  readonly volumetricEfficiency: SpeedCurve;
  /** Clearances as an orifice; 0 unless said. What slips through them comes off beside the efficiency. */
  readonly leakageAreaMm2?: number | undefined;
};

export type CentrifugalBlower = AnyBlower & {
  readonly kind: "centrifugal";
  /** Of the blower's shaft. */
  readonly designSpeedRpm: number;
  readonly designPressureRatio: number;
  /** Not used: a centrifugal blower's delivery is what the engine takes at its pressure ratio. */
  readonly volumetricEfficiency?: SpeedCurve | undefined;
};

export type BlowerDrive = {
  readonly crankPulleyMm: number;
  readonly blowerPulleyMm: number;
  readonly internalRatio: number;
  /** What the belt's maker allows; not judged unless given. */
  readonly maxBeltSpeedMPerS?: number | undefined;
  /** Of the belt and the gears; 1 unless said. */
  readonly efficiency?: SpeedCurve | undefined;
};

export type Ambient = { readonly pressureKPa: number; readonly tempC: number };

export type ChargeCooler = {
  readonly effectiveness: number;
  readonly coolantTempC: number;
  readonly pressureDropKPa: number;
};

/** Curves are over engine speed. */
export type BlowerQuestion = {
  readonly engine: Engine;
  readonly blower: DisplacementBlower | CentrifugalBlower;
  readonly drive: BlowerDrive;
  readonly ambient: Ambient;
  readonly chargeCooler?: ChargeCooler | null | undefined;
  /** Filter and pipe before the blower; 0 unless said. */
  readonly inletDropKPa?: number | undefined;
  readonly speedsRpm: readonly number[];
};

export type BlowerPoint = {
  /** Of the engine. */
  readonly speedRpm: number;
  readonly blowerSpeedRpm: number;
  /** Blower outlet over blower inlet, both absolute. */
  readonly pressureRatio: number;
  /** Manifold over ambient: what a gauge shows. */
  readonly boostKPa: number;
  readonly airMassFlowKgPerS: number;
  readonly dischargeTempC: number;
  readonly manifoldTempC: number;
  readonly drivePowerKw: number;
  /** The blower turns faster than its maker allows. */
  readonly overspeed: boolean;
  readonly beltSpeedMPerS: number;
  /** The belt runs faster than its maker allows. */
  readonly beltOverspeed: boolean;
  /** Through the leakage area, of what the rotors sweep; null where there are no rotors that displace. */
  readonly leakagePct: number | null;
  /** The engine draws more than the blower moves, so the bypass stands open. */
  readonly bypass: boolean;
};
