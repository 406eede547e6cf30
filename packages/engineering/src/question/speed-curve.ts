import { ImpossibleInputError } from "@buildproof/units";
import { interpolate } from "./interpolate";
import { refuseOutside } from "./refuse-outside";

type CurvePoint = { readonly speedRpm: number; readonly value: number };

/** A figure that holds at every engine speed, or one that is given at some of them. */
export type SpeedCurve = number | readonly CurvePoint[];

/** Linear between the points; beyond the first and the last the end value holds, because nothing is known there. */
export function valueAtSpeed(curve: SpeedCurve, speedRpm: number): number {
  if (typeof curve === "number") return curve;
  return interpolate(curve, speedOf, figureOf, speedRpm);
}

function speedOf({ speedRpm }: CurvePoint): number {
  return speedRpm;
}

function figureOf({ value }: CurvePoint): number {
  return value;
}

/** Refuses a curve without points, out of order, or with a value outside the bounds. */
export function checkSpeedCurve(
  curve: SpeedCurve | undefined,
  path: string,
  least: number,
  most: number,
): void {
  if (curve === undefined || typeof curve === "number") {
    refuseOutside(curve, path, least, most);
    return;
  }
  if (curve.length === 0) {
    throw new ImpossibleInputError(
      "empty-curve",
      `${path} has no points: give a number or at least one point.`,
      path,
    );
  }
  curve.forEach(({ value }, at) => {
    refuseOutside(value, `${path}[${at}].value`, least, most);
  });
  checkRisingSpeeds(curve, path);
}

/** Refuses points whose speeds do not rise, naming the first that does not. */
export function checkRisingSpeeds(points: readonly { readonly speedRpm: number }[], path: string): void {
  points.forEach(({ speedRpm }, at) => {
    refuseOutside(speedRpm, `${path}[${at}].speedRpm`, 0, 30_000);
    if (at > 0 && speedRpm <= (points[at - 1]?.speedRpm ?? 0)) {
      throw new ImpossibleInputError(
        "speeds-not-rising",
        `The speeds of ${path} must rise from point to point: put them in order, each once.`,
        `${path}[${at}].speedRpm`,
      );
    }
  });
}
