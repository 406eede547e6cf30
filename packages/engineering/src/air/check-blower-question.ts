import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import { checkSpeedCurve } from "../question/speed-curve";
import type { BlowerQuestion } from "./blower-question";

/** A tuned intake fills its cylinders a little beyond the manifold's density; nothing else passes 1. */
const MOST_ENGINE_EFFICIENCY = 1.1;

/** Refuses what no engine, blower or drive can be, naming the field. A blower driven too fast is not refused. */
export function checkBlowerQuestion(question: BlowerQuestion): void {
  checkEngine(question);
  checkBlower(question);
  const { drive } = question;
  refuseOutside(drive.crankPulleyMm, "drive.crankPulleyMm", 10, 1_000);
  refuseOutside(drive.blowerPulleyMm, "drive.blowerPulleyMm", 10, 1_000);
  refuseOutside(drive.internalRatio, "drive.internalRatio", 0.1, 30);
  refuseOutside(drive.maxBeltSpeedMPerS, "drive.maxBeltSpeedMPerS", 1, 200);
  checkSpeedCurve(drive.efficiency, "drive.efficiency", 0.1, 1);
  checkAir(question);
}

function checkEngine({ engine, speedsRpm }: BlowerQuestion): void {
  refuseOutside(engine.displacementL, "engine.displacementL", 0.01, 100);
  checkSpeedCurve(engine.volumetricEfficiency, "engine.volumetricEfficiency", 0.1, MOST_ENGINE_EFFICIENCY);
  refuseOutside(engine.maxSpeedRpm, "engine.maxSpeedRpm", 100, 30_000);
  speedsRpm.forEach((speed, at) => {
    refuseOutside(speed, `speedsRpm[${at}]`, 1, 30_000);
    if (speed <= engine.maxSpeedRpm) return;
    throw new ImpossibleInputError(
      "above-engine-speed",
      `speedsRpm[${at}] is ${speed}, above the engine's maximum of ${engine.maxSpeedRpm}: ask for speeds up to it.`,
      `speedsRpm[${at}]`,
    );
  });
}

function checkBlower({ blower }: BlowerQuestion): void {
  checkSpeedCurve(blower.adiabaticEfficiency, "blower.adiabaticEfficiency", 0.1, 1);
  checkSpeedCurve(blower.volumetricEfficiency, "blower.volumetricEfficiency", 0.1, 1);
  refuseOutside(blower.maxSpeedRpm, "blower.maxSpeedRpm", 100, 500_000);
  if (blower.kind === "displacement") {
    refuseOutside(blower.displacementLPerRev, "blower.displacementLPerRev", 0.01, 50);
    refuseOutside(blower.leakageAreaMm2, "blower.leakageAreaMm2", 0, 5_000);
  } else {
    refuseOutside(blower.designSpeedRpm, "blower.designSpeedRpm", 100, 500_000);
    refuseOutside(blower.designPressureRatio, "blower.designPressureRatio", 1, 6);
  }
}

function checkAir({ ambient, inletDropKPa, chargeCooler }: BlowerQuestion): void {
  refuseOutside(ambient.pressureKPa, "ambient.pressureKPa", 20, 120);
  refuseOutside(ambient.tempC, "ambient.tempC", -60, 80);
  refuseOutside(inletDropKPa, "inletDropKPa", 0, 30);
  if (chargeCooler) {
    refuseOutside(chargeCooler.effectiveness, "chargeCooler.effectiveness", 0, 1);
    refuseOutside(chargeCooler.coolantTempC, "chargeCooler.coolantTempC", -60, 130);
    refuseOutside(chargeCooler.pressureDropKPa, "chargeCooler.pressureDropKPa", 0, 50);
  }
  const lost = (inletDropKPa ?? 0) + (chargeCooler?.pressureDropKPa ?? 0);
  if (lost < ambient.pressureKPa) return;
  throw new ImpossibleInputError(
    "no-pressure-left",
    "The pressure drops take all of the ambient pressure: check inletDropKPa, chargeCooler.pressureDropKPa and their units.",
    "inletDropKPa",
  );
}
