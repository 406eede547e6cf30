import { valueAtSpeed } from "../question/speed-curve";
import { balancedRatio } from "./balanced-ratio";
import type { BlowerPoint, BlowerQuestion } from "./blower-question";
import { centrifugalRatio } from "./centrifugal-ratio";
import { type ChargePath, chargeAir, chargePath } from "./charge-air";
import { checkBlowerQuestion } from "./check-blower-question";
import { displacementDelivery } from "./displacement-delivery";
import { AIR_HEAT_CAPACITY, airDensity, engineAirFlow, KELVIN_AT_0_C } from "./dry-air";

/**
 * Where a belt-driven blower and a four-stroke engine settle at each engine speed: pressure, air, temperatures and
 * the power the blower takes.
 *
 * @source  Conservation of mass and energy with the ideal gas; see the parts.
 * @valid   Steady full load with an open throttle. Constant pressure drops and coolant temperature: no heat soak.
 *          No belt slip. The bypass opens fully or not at all, and costs nothing.
 * @vectors shared/reference/blower.json
 * @throws  ImpossibleInputError for parts that cannot be, speeds beyond the engine's, or a balance that is not found.
 */
export function blower(question: BlowerQuestion): { readonly points: readonly BlowerPoint[] } {
  checkBlowerQuestion(question);
  return { points: question.speedsRpm.map((speed) => checkedBlowerPoint(question, speed)) };
}

/** One speed of a question that has been checked. */
export function checkedBlowerPoint(question: BlowerQuestion, speedRpm: number): BlowerPoint {
  const { drive, blower, ambient } = question;
  const blowerSpeedRpm = speedRpm * (drive.crankPulleyMm / drive.blowerPulleyMm) * drive.internalRatio;
  const beltSpeedMPerS = (Math.PI * drive.crankPulleyMm * speedRpm) / 60_000;
  const path = chargePath(question, speedRpm);
  const { pressureRatio, airMassFlowKgPerS, bypass, leakagePct } = settled(
    question,
    path,
    speedRpm,
    blowerSpeedRpm,
  );
  const { dischargeK, manifoldK, manifoldKPa } = chargeAir(path, pressureRatio);
  const work = airMassFlowKgPerS * AIR_HEAT_CAPACITY * (dischargeK - path.inletK);
  return {
    speedRpm,
    blowerSpeedRpm,
    pressureRatio,
    boostKPa: manifoldKPa - ambient.pressureKPa,
    airMassFlowKgPerS,
    dischargeTempC: dischargeK - KELVIN_AT_0_C,
    manifoldTempC: manifoldK - KELVIN_AT_0_C,
    drivePowerKw: bypass ? 0 : work / valueAtSpeed(drive.efficiency ?? 1, speedRpm),
    beltSpeedMPerS,
    beltOverspeed: beltSpeedMPerS > (drive.maxBeltSpeedMPerS ?? Number.POSITIVE_INFINITY),
    overspeed: blowerSpeedRpm > blower.maxSpeedRpm,
    leakagePct,
    bypass,
  };
}

type Settled = Pick<BlowerPoint, "pressureRatio" | "airMassFlowKgPerS" | "bypass" | "leakagePct">;

function settled(
  question: BlowerQuestion,
  path: ChargePath,
  speedRpm: number,
  blowerSpeedRpm: number,
): Settled {
  const { blower } = question;
  if (blower.kind === "centrifugal") {
    const pressureRatio = centrifugalRatio(blower, blowerSpeedRpm);
    return {
      pressureRatio,
      airMassFlowKgPerS: drawn(question, path, speedRpm, pressureRatio),
      bypass: false,
      leakagePct: null,
    };
  }
  const delivery = displacementDelivery(blower, path, speedRpm, blowerSpeedRpm);
  const pressureRatio = balancedRatio(question, path, speedRpm, delivery);
  if (pressureRatio === null) {
    const airMassFlowKgPerS = drawn(question, path, speedRpm, 1);
    return { pressureRatio: 1, airMassFlowKgPerS, bypass: true, leakagePct: 0 };
  }
  return {
    pressureRatio,
    airMassFlowKgPerS: delivery.at(pressureRatio),
    bypass: false,
    leakagePct: delivery.leakagePct(pressureRatio),
  };
}

/** kg/s that the engine takes from the manifold at a pressure ratio. */
function drawn(
  { engine }: BlowerQuestion,
  path: ChargePath,
  speedRpm: number,
  pressureRatio: number,
): number {
  const { manifoldK, manifoldKPa } = chargeAir(path, pressureRatio);
  const efficiency = valueAtSpeed(engine.volumetricEfficiency, speedRpm);
  return engineAirFlow(engine.displacementL, speedRpm, efficiency, airDensity(manifoldKPa, manifoldK));
}
