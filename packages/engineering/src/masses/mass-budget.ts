import {
  decimalToNumber,
  exactDecimal,
  ImpossibleInputError,
  subtractDecimals,
  sumDecimals,
} from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";

export type MassBudgetQuestion = {
  readonly kerbKg: number;
  /** What the build and the vehicle's owner have added for good. */
  readonly addedKg: readonly number[];
  /** People, luggage and the load on the tow ball on the day. */
  readonly carriedKg: number;
  readonly gvmKg: number;
  /** Of vehicle and trailer together. */
  readonly gcmKg: number;
  readonly brakedTowKg: number;
};

export type MassBudget = {
  /** Left for people and load after the build; negative means over before anyone sits in it. */
  readonly payloadKg: number;
  readonly vehicleKg: number;
  /** Negative: over the gross vehicle mass. */
  readonly gvmLeftKg: number;
  readonly maxTrailerKg: number;
  readonly trailerLimit: "combination" | "tow-rating";
};

/**
 * What may still be carried and towed. Sums are exact: a load that just fits is not refused. The plates
 * on vehicle, tow bar and trailer come first, and local rules decide about upgrades.
 *
 * @source  Definitions: payload = GVM − vehicle; trailer ≤ tow rating and combination ≤ GCM.
 * @vectors shared/reference/masses.json
 */
export function massBudget(question: MassBudgetQuestion): MassBudget {
  const { kerbKg, addedKg, carriedKg, gvmKg, gcmKg, brakedTowKg } = question;
  refuseOutside(kerbKg, "kerbKg", 1, 100_000);
  // A part may weigh less than the one it replaces.
  addedKg.forEach((kg, at) => {
    refuseOutside(kg, `addedKg[${at}]`, -5_000, 50_000);
  });
  refuseOutside(carriedKg, "carriedKg", 0, 100_000);
  refuseOutside(gvmKg, "gvmKg", 1, 100_000);
  refuseOutside(gcmKg, "gcmKg", 1, 200_000);
  refuseOutside(brakedTowKg, "brakedTowKg", 0, 100_000);
  if (gcmKg < gvmKg) {
    throw new ImpossibleInputError(
      "gcm-below-gvm",
      "The combination mass gcmKg cannot be below the vehicle's own gvmKg: check the plate.",
      "gcmKg",
    );
  }
  const empty = sumDecimals([kerbKg, ...addedKg].map(exactDecimal));
  const vehicle = sumDecimals([empty, exactDecimal(carriedKg)]);
  const left = (limitKg: number, taken: typeof empty) =>
    decimalToNumber(subtractDecimals(exactDecimal(limitKg), taken));
  const combinationLeftKg = Math.max(0, left(gcmKg, vehicle));
  return {
    payloadKg: left(gvmKg, empty),
    vehicleKg: decimalToNumber(vehicle),
    gvmLeftKg: left(gvmKg, vehicle),
    maxTrailerKg: Math.min(combinationLeftKg, brakedTowKg),
    trailerLimit: combinationLeftKg < brakedTowKg ? "combination" : "tow-rating",
  };
}

/** Mass on the trailer's own wheels, in kg, from its whole mass and the load on the tow ball: brakes go by this. */
export function trailerWheelMassKg(trailerKg: number, towBallKg: number): number {
  refuseOutside(trailerKg, "trailerKg", 0, 100_000);
  refuseOutside(towBallKg, "towBallKg", 0, trailerKg);
  return decimalToNumber(subtractDecimals(exactDecimal(trailerKg), exactDecimal(towBallKg)));
}
