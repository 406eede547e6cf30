import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import { tyre } from "./tyre";

export type TyreFitness = {
  readonly carries: boolean;
  readonly axleCapacityKg: number;
  readonly fastEnough: boolean;
  readonly speedKmh: number;
};

/**
 * Whether two tyres of a designation carry an axle's rating and stand the vehicle's top speed. The
 * placard and local rules may ask for more, and may allow a lower symbol.
 *
 * @source  Definition of load index and speed symbol, ISO 4000-1.
 * @vectors shared/reference/masses.json
 * @throws  ImpossibleInputError where the designation does not say what the tyre carries.
 */
export function tyreFitness(designation: string, axleRatingKg: number, topSpeedKmh: number): TyreFitness {
  refuseOutside(axleRatingKg, "axleRatingKg", 1, 50_000);
  refuseOutside(topSpeedKmh, "topSpeedKmh", 1, 500);
  const { loadKg, speedKmh } = tyre(designation);
  if (loadKg === null || speedKmh === null) {
    throw new ImpossibleInputError(
      "no-service-description",
      `"${designation}" does not say what the tyre carries: add load index and speed symbol, as in 285/65R18 116T.`,
      "designation",
    );
  }
  return {
    carries: 2 * loadKg >= axleRatingKg,
    axleCapacityKg: 2 * loadKg,
    fastEnough: speedKmh >= topSpeedKmh,
    speedKmh,
  };
}
