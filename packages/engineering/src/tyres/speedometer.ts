import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import { tyre } from "./tyre";

/** Either both speeds as measured, or what a tyre change does to a speedometer whose error is known. */
export type SpeedometerQuestion = {
  readonly trueKmh?: number | undefined;
  readonly indicatedKmh: number;
  readonly standardTyre?: string | undefined;
  readonly fittedTyre?: string | undefined;
  /** By how much it over-reads on the standard tyre, measured; negative where it under-reads. */
  readonly standardErrorPct?: number | undefined;
};

export type SpeedometerAnswer = {
  readonly trueKmh: number;
  readonly indicatedKmh: number;
  readonly errorPct: number;
  readonly meetsUnR39: boolean;
  readonly recalibrationNeeded: boolean;
};

/** So that a limit met exactly is not missed by the last bit of a double. */
const SLACK_KMH = 1e-9;

/**
 * Speedometer error and whether UN R39 allows it: never under the true speed, and at most a tenth
 * of it plus 4 km/h over.
 *
 * @source  UN R39 paragraph 5.3, as in ADR 18/03. The regulation tests at 40, 80 and 120 km/h.
 * @vectors shared/reference/speedometer.json
 * @throws  ImpossibleInputError unless exactly one of the two ways is asked, completely.
 */
export function speedometer(question: SpeedometerQuestion): SpeedometerAnswer {
  const { indicatedKmh } = question;
  refuseOutside(indicatedKmh, "indicatedKmh", 0, 500);
  const trueKmh = trueSpeed(question);
  const over = indicatedKmh - trueKmh;
  const meetsUnR39 = over >= -SLACK_KMH && over <= 0.1 * trueKmh + 4 + SLACK_KMH;
  return {
    trueKmh,
    indicatedKmh,
    errorPct: (100 * over) / trueKmh,
    meetsUnR39,
    recalibrationNeeded: !meetsUnR39,
  };
}

function trueSpeed(question: SpeedometerQuestion): number {
  const { trueKmh, indicatedKmh, standardTyre, fittedTyre, standardErrorPct } = question;
  if (trueKmh !== undefined) {
    if (standardTyre !== undefined || fittedTyre !== undefined || standardErrorPct !== undefined) {
      throw new ImpossibleInputError(
        "two-ways",
        "Give either trueKmh or the two tyres with standardErrorPct, not both.",
        "trueKmh",
      );
    }
    refuseOutside(trueKmh, "trueKmh", 0.1, 500);
    return trueKmh;
  }
  refuseOutside(indicatedKmh, "indicatedKmh", 0.1, 500);
  const standard = tyre(needed(standardTyre, "standardTyre"), "standardTyre").overallDiameterMm;
  const fitted = tyre(needed(fittedTyre, "fittedTyre"), "fittedTyre").overallDiameterMm;
  const errorPct = needed(standardErrorPct, "standardErrorPct");
  refuseOutside(errorPct, "standardErrorPct", -50, 100);
  return (indicatedKmh / (1 + errorPct / 100)) * (fitted / standard);
}

function needed<Value>(value: Value | undefined, path: string): Value {
  if (value !== undefined) return value;
  throw new ImpossibleInputError(
    "missing-field",
    `The field ${path} is missing: give trueKmh, or standardTyre, fittedTyre and standardErrorPct.`,
    path,
  );
}
