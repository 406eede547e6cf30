import { refuseOutside } from "../question/refuse-outside";
import { tyre } from "../tyres/tyre";

export type AddedMass = {
  readonly massKg: number;
  /** Negative is ahead of the front axle; beyond the wheelbase, behind the rear one. */
  readonly behindFrontAxleMm: number;
};

export type AxleLoadsQuestion = {
  readonly wheelbaseMm: number;
  /** As weighed before. */
  readonly frontKg: number;
  readonly rearKg: number;
  readonly added: readonly AddedMass[];
  readonly tyre: string;
  readonly frontRatingKg: number;
  readonly rearRatingKg: number;
};

/** One axle against its own rating and its two tyres. */
export type AxleLoad = {
  readonly loadKg: number;
  readonly ratingKg: number;
  /** Null where the designation has no load index. */
  readonly tyreCapacityKg: number | null;
  /** The smaller of the two limits less the load; negative is over. */
  readonly leftKg: number;
};

const TYRES_ON_AXLE = 2;

/**
 * Axle loads after a build, and what is left. A mass behind the rear axle, such as a tow ball's, lifts
 * the front. Weigh the finished vehicle: this only says what to expect.
 *
 * @source  Moments about the front axle. Capacity: two single tyres at their load index.
 * @vectors shared/reference/masses.json
 */
export function axleLoads(question: AxleLoadsQuestion): {
  readonly front: AxleLoad;
  readonly rear: AxleLoad;
} {
  const { wheelbaseMm, added } = question;
  refuseOutside(wheelbaseMm, "wheelbaseMm", 1_000, 10_000);
  for (const name of ["frontKg", "rearKg", "frontRatingKg", "rearRatingKg"] as const) {
    refuseOutside(question[name], name, 1, 50_000);
  }
  added.forEach(({ massKg, behindFrontAxleMm }, at) => {
    refuseOutside(massKg, `added[${at}].massKg`, -5_000, 50_000);
    refuseOutside(behindFrontAxleMm, `added[${at}].behindFrontAxleMm`, -3_000, 15_000);
  });
  const mass = added.reduce((sum, { massKg }) => sum + massKg, 0);
  const rearShare = added.reduce(
    (sum, part) => sum + (part.massKg * part.behindFrontAxleMm) / wheelbaseMm,
    0,
  );
  const perTyreKg = tyre(question.tyre, "tyre").loadKg;
  const capacityKg = perTyreKg === null ? null : TYRES_ON_AXLE * perTyreKg;
  return {
    front: axle(question.frontKg + mass - rearShare, question.frontRatingKg, capacityKg),
    rear: axle(question.rearKg + rearShare, question.rearRatingKg, capacityKg),
  };
}

function axle(loadKg: number, ratingKg: number, tyreCapacityKg: number | null): AxleLoad {
  return {
    loadKg,
    ratingKg,
    tyreCapacityKg,
    leftKg: Math.min(ratingKg, tyreCapacityKg ?? ratingKg) - loadKg,
  };
}
