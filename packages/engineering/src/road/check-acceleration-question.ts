import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import type { AccelerationQuestion, PowerPoint } from "./acceleration-question";

/** Refuses a vehicle or a road that cannot be, naming the field and what to do. */
export function checkAccelerationQuestion(question: AccelerationQuestion): void {
  refuseOutside(question.massKg, "massKg", 1, 100_000);
  refuseOutside(question.rotatingFactor, "rotatingFactor", 1, 3);
  refuseOutside(question.finalDrive, "finalDrive", 0.2, 30);
  refuseOutside(question.shiftTimeS, "shiftTimeS", 0, 10);
  refuseOutside(question.drivelineEfficiency, "drivelineEfficiency", 0.05, 1);
  refuseOutside(question.rollingCoefficient, "rollingCoefficient", 0, 0.5);
  refuseOutside(question.dragAreaM2, "dragAreaM2", 0, 50);
  refuseOutside(question.airDensityKgPerM3, "airDensityKgPerM3", 0, 2);
  refuseOutside(question.slopePct, "slopePct", -50, 100);
  refuseOutside(question.gripCoefficient, "gripCoefficient", 0.01, 1_000);
  refuseOutside(question.rollOutM, "rollOutM", 0, 100);
  refuseOutside(question.headwindKmh, "headwindKmh", -200, 200);
  refuseOutside(question.frontLoadPct, "frontLoadPct", 1, 99);
  refuseOutside(question.gravityHeightToWheelbase, "gravityHeightToWheelbase", 0, 1);
  checkGears(question.gears);
  checkCurve(question.curve, "curve");
  checkGearCurves(question);
  checkLaunch(question);
  checkGoals(question);
}

function checkGears(gears: readonly number[]): void {
  if (gears.length === 0) throw refusal("no-gears", "There are no gears: give at least one ratio.", "gears");
  gears.forEach((ratio, at) => {
    refuseOutside(ratio, `gears[${at}]`, 0.1, 30);
    if (at > 0 && ratio >= (gears[at - 1] ?? 0)) {
      throw refusal(
        "gears-not-falling",
        "Each gear must have a smaller ratio than the one before: put them in order from first to top.",
        `gears[${at}]`,
      );
    }
  });
}

function checkGearCurves({ gearCurves = [], gears }: AccelerationQuestion): void {
  gearCurves.forEach(({ gear, curve }, at) => {
    const path = `gearCurves[${at}]`;
    refuseOutside(gear, `${path}.gear`, 1, gears.length);
    if (!Number.isInteger(gear) || gearCurves.findIndex((each) => each.gear === gear) !== at) {
      throw refusal(
        "not-one-gear",
        "Name each gear by its number, first is 1, and only once.",
        `${path}.gear`,
      );
    }
    checkCurve(curve, `${path}.curve`);
  });
}

function checkCurve(curve: readonly PowerPoint[], path: string): void {
  curve.forEach(({ speedRpm, powerKw }, at) => {
    refuseOutside(speedRpm, `${path}[${at}].speedRpm`, 0, 100_000);
    refuseOutside(powerKw, `${path}[${at}].powerKw`, 0, 100_000);
    if (at > 0 && speedRpm <= (curve[at - 1]?.speedRpm ?? 0)) {
      throw refusal(
        "speeds-not-rising",
        "The speeds of the curve must rise from point to point: put them in order, each once.",
        `${path}[${at}].speedRpm`,
      );
    }
  });
  const running = curve.filter(({ speedRpm, powerKw }) => speedRpm > 0 && powerKw > 0);
  if (running.length === 0 || curve.length < 2) {
    throw refusal("empty-curve", "The curve needs at least two points, one of them with power.", path);
  }
  const [first] = curve;
  if (first?.speedRpm === 0 && first.powerKw > 0) {
    throw refusal(
      "power-at-rest",
      "An engine that stands gives no power: begin the curve at its lowest running speed.",
      `${path}[0].powerKw`,
    );
  }
}

function checkLaunch({ curve, launchSpeedRpm }: AccelerationQuestion): void {
  refuseOutside(
    launchSpeedRpm,
    "launchSpeedRpm",
    Math.max(curve[0]?.speedRpm ?? 0, 1),
    curve.at(-1)?.speedRpm ?? 0,
  );
}

function checkGoals({ targetsKmh, distancesM, rollOutM = 0 }: AccelerationQuestion): void {
  if (targetsKmh.length + distancesM.length === 0) {
    throw refusal(
      "nothing-asked",
      "Nothing is asked: give a speed in targetsKmh or a distance in distancesM.",
      "targetsKmh",
    );
  }
  targetsKmh.forEach((target, at) => {
    refuseOutside(target, `targetsKmh[${at}]`, 0.1, 1_000);
  });
  distancesM.forEach((distance, at) => {
    refuseOutside(distance, `distancesM[${at}]`, 0.01, 100_000);
    if (distance > rollOutM) return;
    throw refusal(
      "within-roll-out",
      `The clock starts only after ${rollOutM} m: ask for a longer distance.`,
      `distancesM[${at}]`,
    );
  });
}

function refusal(code: string, message: string, path: string): ImpossibleInputError {
  return new ImpossibleInputError(code, message, path);
}
