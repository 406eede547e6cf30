import { rollingCircumferenceM, tyre } from "../tyres/tyre";
import type { AccelerationQuestion, RoadLimit } from "./acceleration-question";
import { enginePower, shiftSpeed } from "./engine-power";

/** Standard gravity, m/s² (CGPM 1901). */
const GRAVITY = 9.80665;
/** 0.55 m over 2.7 m: a car's, from memory. */
const GRAVITY_HEIGHT_TO_WHEELBASE = 0.55 / 2.7;

/** The forces on a vehicle by gear (from 0) and road speed in m/s. */
export type RoadVehicle = {
  readonly topGear: number;
  /** Road speed at which each gear is left; in top, that of the highest engine speed. */
  readonly leaveAtMs: readonly number[];
  readonly effectiveMassKg: number;
  driveN(gear: number, speedMs: number): number;
  resistanceN(speedMs: number): number;
  limit(gear: number, speedMs: number): RoadLimit;
  engineRpm(gear: number, speedMs: number): number;
};

/**
 * Drive force is the least of engine and grip; air, rolling and slope resist.
 *
 * @source  Newton's second law along the road. Load transfer: moments about the contact patch, as in
 *          any vehicle-dynamics textbook; no axle carries more than the whole vehicle.
 * @vectors shared/reference/acceleration.json
 */
export function roadVehicle(question: AccelerationQuestion): RoadVehicle {
  const power = enginePower(question.curve);
  const circumference = rollingCircumferenceM(tyre(question.tyre, "tyre"));
  const rpmPerMs = question.gears.map((ratio) => (ratio * question.finalDrive * 60) / circumference);
  const perGear = (gear: number) => rpmPerMs[gear] ?? Number.NaN;
  const launch = question.launchSpeedRpm ?? power.torquePeakRpm;
  const powers = question.gears.map((_, at) => {
    const held = question.gearCurves?.find(({ gear }) => gear === at + 1);
    return held ? enginePower(held.curve) : power;
  });
  const powerIn = (gear: number) => powers[gear] ?? power;
  const slip = (gear: number) => (gear === 0 ? launch : powerIn(gear).lowestRpm);
  const gripN = gripForce(question);
  const engineRpm = (gear: number, speedMs: number) =>
    Math.min(Math.max(speedMs * perGear(gear), slip(gear)), powerIn(gear).highestRpm);
  const pushN = lastKept((gear, speedMs) => {
    // A slipping clutch passes the engine's torque, not its power: hence the engine's speed, not the road's.
    const rpm = engineRpm(gear, speedMs);
    return (powerIn(gear).at(rpm) * 1000 * question.drivelineEfficiency * perGear(gear)) / rpm;
  });
  const resistance = resistanceForce(question);
  return {
    topGear: question.gears.length - 1,
    leaveAtMs: question.gears.map((ratio, gear) => {
      const [own, next] = [powerIn(gear), question.gears[gear + 1]];
      const leaveRpm = next === undefined ? own.highestRpm : shiftSpeed(own, powerIn(gear + 1), next / ratio);
      return leaveRpm / perGear(gear);
    }),
    effectiveMassKg: question.massKg * question.rotatingFactor,
    driveN: (gear, speedMs) => Math.min(pushN(gear, speedMs), gripN),
    resistanceN: resistance,
    limit(gear, speedMs) {
      if (pushN(gear, speedMs) > gripN) return "grip";
      return speedMs * perGear(gear) < slip(gear) ? "clutch" : "engine";
    },
    engineRpm,
  };
}

/** A step asks for force and limit at one speed several times: what was worked out last is kept. */
function lastKept(force: (gear: number, speedMs: number) => number) {
  const last = { gear: Number.NaN, speedMs: Number.NaN, newtons: Number.NaN };
  return (gear: number, speedMs: number): number => {
    if (gear === last.gear && speedMs === last.speedMs) return last.newtons;
    last.newtons = force(gear, speedMs);
    last.gear = gear;
    last.speedMs = speedMs;
    return last.newtons;
  };
}

/** Greatest force the driven tyres pass to the road, in N. */
function gripForce(question: AccelerationQuestion): number {
  const { massKg, gripCoefficient: grip, slopePct } = question;
  const load = massKg * GRAVITY * Math.cos(Math.atan(slopePct / 100));
  const front = (question.frontLoadPct ?? 50) / 100;
  const transfer = grip * (question.gravityHeightToWheelbase ?? GRAVITY_HEIGHT_TO_WHEELBASE);
  switch (question.drivenAxles) {
    case "all":
      return grip * load;
    case "front":
      return (grip * load * front) / (1 + transfer);
    case "rear":
      return grip * load * (transfer < 1 ? Math.min(1, (1 - front) / (1 - transfer)) : 1);
  }
}

/** Rolling, slope and air, in N over road speed in m/s. */
function resistanceForce(question: AccelerationQuestion): (speedMs: number) => number {
  const angle = Math.atan(question.slopePct / 100);
  const weight = question.massKg * GRAVITY;
  const steady = weight * (question.rollingCoefficient * Math.cos(angle) + Math.sin(angle));
  const drag = 0.5 * question.airDensityKgPerM3 * question.dragAreaM2;
  const wind = (question.headwindKmh ?? 0) / 3.6;
  return (speedMs) => steady + drag * (speedMs + wind) * Math.abs(speedMs + wind);
}
