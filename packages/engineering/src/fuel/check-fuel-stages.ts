import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import { checkSpeedCurve } from "../question/speed-curve";
import type { DirectInjectors, FuelStage, PortInjectors, TankPump } from "./fuel-stage";

/** Refuses stages that no fuel system has, naming the field. `path` is where the list stands in the question. */
export function checkFuelStages(stages: readonly FuelStage[], path: string): void {
  if (stages.length === 0) {
    throw new ImpossibleInputError("no-stages", "There are no fuel stages: give at least one.", path);
  }
  stages.forEach((stage, at) => {
    checkStage(stage, `${path}[${at}]`);
  });
}

function checkStage(stage: FuelStage, at: string): void {
  switch (stage.kind) {
    case "tank-pump":
      checkTankPump(stage, at);
      break;
    case "high-pressure-pump":
      refuseOutside(stage.displacementCm3PerCamRev, `${at}.displacementCm3PerCamRev`, 0.001, 100);
      refuseOutside(stage.camRatio, `${at}.camRatio`, 0.1, 4);
      checkSpeedCurve(stage.volumetricEfficiency, `${at}.volumetricEfficiency`, 0.01, 1);
      refuseOutside(stage.railPressure?.railKPa, `${at}.railPressure.railKPa`, 100, 400_000);
      refuseOutside(stage.railPressure?.ratedKPa, `${at}.railPressure.ratedKPa`, 100, 400_000);
      refuseOutside(stage.railPressure?.lossPctPer10MPa, `${at}.railPressure.lossPctPer10MPa`, 0, 20);
      break;
    case "port-injectors":
      checkPortInjectors(stage, at);
      break;
    case "direct-injectors":
      checkDirectInjectors(stage, at);
  }
}

function checkTankPump({ points, systemPressureKPa }: TankPump, at: string): void {
  points.forEach(({ pressureKPa, flowLPerH }, point) => {
    refuseOutside(pressureKPa, `${at}.points[${point}].pressureKPa`, 0, 5_000);
    refuseOutside(flowLPerH, `${at}.points[${point}].flowLPerH`, 0, 10_000);
    if (point > 0 && pressureKPa <= (points[point - 1]?.pressureKPa ?? 0)) {
      throw new ImpossibleInputError(
        "pressures-not-rising",
        `The pressures of ${at}.points must rise from point to point: put them in order, each once.`,
        `${at}.points[${point}].pressureKPa`,
      );
    }
  });
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) {
    throw new ImpossibleInputError(
      "empty-curve",
      `${at}.points has no points: give the pump's curve.`,
      `${at}.points`,
    );
  }
  if (systemPressureKPa >= first.pressureKPa && systemPressureKPa <= last.pressureKPa) return;
  throw new ImpossibleInputError(
    "outside-pump-curve",
    `${at}.systemPressureKPa ${systemPressureKPa} is outside the pump's curve of ${first.pressureKPa} to ${last.pressureKPa} kPa: give a curve that reaches it.`,
    `${at}.systemPressureKPa`,
  );
}

function checkPortInjectors(stage: PortInjectors, at: string): void {
  checkInjectors(stage, at);
  refuseOutside(stage.staticFlowCm3PerMin, `${at}.staticFlowCm3PerMin`, 1, 20_000);
  refuseOutside(stage.manifoldKPa, `${at}.manifoldKPa`, -105, 1_000);
  refuseOutside(stage.dutyLimit, `${at}.dutyLimit`, 0.01, 1);
  refuseBackFlow(stage.railKPa, stage.manifoldKPa, "manifoldKPa", at);
}

function checkDirectInjectors(stage: DirectInjectors, at: string): void {
  checkInjectors(stage, at);
  refuseOutside(stage.staticFlowGPerS, `${at}.staticFlowGPerS`, 0.01, 1_000);
  refuseOutside(stage.cylinderKPa, `${at}.cylinderKPa`, -105, 30_000);
  refuseOutside(stage.windowDeg, `${at}.windowDeg`, 1, 720);
  refuseOutside(stage.deadTimeMs, `${at}.deadTimeMs`, 0, 10);
  refuseBackFlow(stage.railKPa, stage.cylinderKPa, "cylinderKPa", at);
}

function checkInjectors(stage: PortInjectors | DirectInjectors, at: string): void {
  refuseOutside(stage.count, `${at}.count`, 1, 64);
  if (!Number.isInteger(stage.count)) {
    throw new ImpossibleInputError(
      "not-whole",
      `${at}.count must be a whole number of injectors.`,
      `${at}.count`,
    );
  }
  refuseOutside(stage.ratedPressureKPa, `${at}.ratedPressureKPa`, 1, 400_000);
  refuseOutside(stage.railKPa, `${at}.railKPa`, 1, 400_000);
}

function refuseBackFlow(railKPa: number, behindKPa: number, name: string, at: string): void {
  if (railKPa > behindKPa) return;
  throw new ImpossibleInputError(
    "no-injection-pressure",
    `${at}.railKPa must be above ${name}, or nothing flows: check both pressures.`,
    `${at}.railKPa`,
  );
}
