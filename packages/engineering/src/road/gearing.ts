import { refuseOutside } from "../question/refuse-outside";
import { rollingCircumferenceM, type Tyre, tyre } from "../tyres/tyre";

export type GearingQuestion = {
  readonly standardTyre: string;
  readonly fittedTyre: string;
  readonly finalDrive: number;
  /** Where the final drive is changed too. */
  readonly fittedFinalDrive?: number | undefined;
  /** Ratio of the gear looked at, usually top. */
  readonly gear: number;
  /** Default 100. */
  readonly atKmh?: number | undefined;
};

export type GearingChange = {
  /** The final drive that on the standard tyre would gear the vehicle as it is now. */
  readonly effectiveFinalDrive: number;
  readonly engineRpmBefore: number;
  readonly engineRpmAfter: number;
  /** Negative is taller gearing: lower engine speed, less force at the wheel. */
  readonly changePct: number;
  /** Half the difference in diameter; suspension not counted. */
  readonly rideHeightRiseMm: number;
};

/**
 * What other tyres, and another final drive, do to the gearing. Clutch or converter locked.
 *
 * @source  Geometry: road speed = engine speed ÷ (gear × final drive) × rolling circumference.
 * @vectors shared/reference/masses.json (ride height), shared/reference/tyre.json (circumference)
 */
export function gearingChange(question: GearingQuestion): GearingChange {
  const { finalDrive, fittedFinalDrive = finalDrive, gear, atKmh = 100 } = question;
  refuseOutside(finalDrive, "finalDrive", 0.2, 30);
  refuseOutside(fittedFinalDrive, "fittedFinalDrive", 0.2, 30);
  refuseOutside(gear, "gear", 0.1, 30);
  refuseOutside(atKmh, "atKmh", 1, 500);
  const standard = tyre(question.standardTyre, "standardTyre");
  const fitted = tyre(question.fittedTyre, "fittedTyre");
  const effectiveFinalDrive = (fittedFinalDrive * standard.overallDiameterMm) / fitted.overallDiameterMm;
  return {
    effectiveFinalDrive,
    engineRpmBefore: engineRpm(atKmh, standard, gear * finalDrive),
    engineRpmAfter: engineRpm(atKmh, fitted, gear * fittedFinalDrive),
    changePct: 100 * (effectiveFinalDrive / finalDrive - 1),
    rideHeightRiseMm: (fitted.overallDiameterMm - standard.overallDiameterMm) / 2,
  };
}

function engineRpm(kmh: number, on: Tyre, overallRatio: number): number {
  return ((kmh / 3.6) * 60 * overallRatio) / rollingCircumferenceM(on);
}
