import { interpolate } from "../question/interpolate";
import { valueAtSpeed } from "../question/speed-curve";
import { type Fuel, fuelProperties } from "./fuel-properties";
import type {
  DirectInjectors,
  FuelPath,
  FuelStage,
  FuelStageKind,
  HighPressurePump,
  PortInjectors,
  TankPump,
} from "./fuel-stage";

export type StageSupply = {
  readonly kind: FuelStageKind;
  readonly path: FuelPath;
  /** The most this stage passes at the speed asked. */
  readonly fuelKgPerH: number;
  /** Share of the working cycle in which an injector may flow, dead time taken off; null for pumps. */
  readonly windowPct: number | null;
};

const CM3_PER_MIN_IN_L_PER_H = 60 / 1_000;
const G_PER_S_IN_KG_PER_H = 3.6;

/**
 * The most one stage passes at an engine speed.
 *
 * @source  Pump: geometry; its loss with pressure from memory (about 1 % in 10 to 15 MPa). Injectors: orifice law, flow as the square root of the pressure drop; timing identities.
 *          Rating terms of port injectors as SAE J1832 names them.
 * @valid   Four-stroke. Straight injector flow: a short pulse passes less than its share.
 * @vectors shared/reference/fuel.json
 */
export function stageSupply(stage: FuelStage, fuel: Fuel, speedRpm: number): StageSupply {
  const { densityKgPerL } = fuelProperties[fuel];
  switch (stage.kind) {
    case "tank-pump":
      return supply(stage, "series", tankPumpFlow(stage) * densityKgPerL);
    case "high-pressure-pump":
      return supply(stage, "direct", highPressurePumpFlow(stage, speedRpm) * densityKgPerL);
    case "port-injectors":
      return supply(stage, "port", portFlow(stage) * densityKgPerL, stage.dutyLimit);
    case "direct-injectors": {
      const window = directWindow(stage, speedRpm);
      return supply(stage, "direct", directFlow(stage) * window, window);
    }
  }
}

function supply(stage: FuelStage, usualPath: FuelPath, fuelKgPerH: number, window?: number): StageSupply {
  return {
    kind: stage.kind,
    path: stage.path ?? usualPath,
    fuelKgPerH,
    windowPct: window === undefined ? null : 100 * window,
  };
}

/** L/h, linear between the points of the maker's curve; the check has made sure that it reaches. */
function tankPumpFlow({ points, systemPressureKPa }: TankPump): number {
  return interpolate(
    points,
    ({ pressureKPa }) => pressureKPa,
    ({ flowLPerH }) => flowLPerH,
    systemPressureKPa,
  );
}

/** L/h. */
function highPressurePumpFlow(pump: HighPressurePump, speedRpm: number): number {
  const { displacementCm3PerCamRev, camRatio = 0.5 } = pump;
  const cm3PerMin = displacementCm3PerCamRev * camRatio * speedRpm * pumpEfficiency(pump, speedRpm);
  return cm3PerMin * CM3_PER_MIN_IN_L_PER_H;
}

/** What a stroke delivers of its volume: as told at the rated pressure, less what more pressure takes. */
function pumpEfficiency({ volumetricEfficiency, railPressure }: HighPressurePump, speedRpm: number): number {
  const rated = valueAtSpeed(volumetricEfficiency, speedRpm);
  if (!railPressure) return rated;
  const { railKPa, ratedKPa, lossPctPer10MPa } = railPressure;
  const loss = (lossPctPer10MPa / 100) * ((railKPa - ratedKPa) / 10_000);
  return Math.min(1, Math.max(0, rated - loss));
}

/** L/h of all at the duty allowed. */
function portFlow(injectors: PortInjectors): number {
  const { count, staticFlowCm3PerMin, ratedPressureKPa, railKPa, manifoldKPa, dutyLimit } = injectors;
  const cm3PerMin = staticFlowCm3PerMin * Math.sqrt((railKPa - manifoldKPa) / ratedPressureKPa);
  return count * cm3PerMin * dutyLimit * CM3_PER_MIN_IN_L_PER_H;
}

/** kg/h of all held open. */
function directFlow(injectors: DirectInjectors): number {
  const { count, staticFlowGPerS, ratedPressureKPa, railKPa, cylinderKPa } = injectors;
  return (
    count * staticFlowGPerS * Math.sqrt((railKPa - cylinderKPa) / ratedPressureKPa) * G_PER_S_IN_KG_PER_H
  );
}

/** Share of the 720° cycle left for flow; none when the dead time eats the window. */
function directWindow({ windowDeg, deadTimeMs }: DirectInjectors, speedRpm: number): number {
  const deadDeg = (deadTimeMs / 1_000) * 6 * speedRpm;
  return Math.max(0, windowDeg - deadDeg) / 720;
}
