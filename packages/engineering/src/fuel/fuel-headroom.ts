import { refuseOutside } from "../question/refuse-outside";
import { checkRisingSpeeds, checkSpeedCurve, type SpeedCurve, valueAtSpeed } from "../question/speed-curve";
import { checkFuelStages } from "./check-fuel-stages";
import { fuelForAir } from "./fuel-demand";
import type { Fuel } from "./fuel-properties";
import type { FuelStage, FuelStageKind } from "./fuel-stage";
import { checkedFuelSupply } from "./fuel-supply";

export type FuelHeadroomQuestion = {
  readonly fuel: Fuel;
  readonly stages: readonly FuelStage[];
  /** Full-load air over engine speed, as `blower` gives it; speeds rising. */
  readonly air: readonly { readonly speedRpm: number; readonly airMassFlowKgPerS: number }[];
  /** Mixture of a sweep of a few seconds. */
  readonly sweepLambda: SpeedCurve;
  /** Mixture once exhaust temperature asks for enrichment, after 5 to 20 s: what a 60 to 90 s hold or a tow sees. */
  readonly sustainedLambda: SpeedCurve;
};

export type HeadroomPoint = {
  readonly speedRpm: number;
  readonly demandKgPerH: number;
  readonly supplyKgPerH: number;
  readonly limitKind: FuelStageKind;
  /** Supply over demand, less 1; negative where it is short. */
  readonly headroom: number;
};

export type FuelShortfall = {
  /** The stage that binds where the shortfall is worst. */
  readonly kind: FuelStageKind;
  readonly fromSpeedRpm: number;
  /** 1 less supply over demand, where that is worst. */
  readonly shortBy: number;
};

export type LoadHeadroom = {
  readonly points: readonly HeadroomPoint[];
  readonly shortfall: FuelShortfall | null;
};

export type FuelHeadroom = { readonly sweep: LoadHeadroom; readonly sustained: LoadHeadroom };

/**
 * What the fuel system has to spare at each speed, in a sweep and under load that is held.
 *
 * @source  fuelDemand and fuelSupply; the two kinds of load are common practice, no published source.
 * @throws  ImpossibleInputError for stages or mixtures that no engine has.
 */
export function fuelHeadroom(question: FuelHeadroomQuestion): FuelHeadroom {
  checkFuelStages(question.stages, "stages");
  checkSpeedCurve(question.sweepLambda, "sweepLambda", 0.5, 5);
  checkSpeedCurve(question.sustainedLambda, "sustainedLambda", 0.5, 5);
  checkRisingSpeeds(question.air, "air");
  question.air.forEach(({ airMassFlowKgPerS }, at) => {
    refuseOutside(airMassFlowKgPerS, `air[${at}].airMassFlowKgPerS`, 1e-6, 20);
  });
  return {
    sweep: loadHeadroom(question, question.sweepLambda),
    sustained: loadHeadroom(question, question.sustainedLambda),
  };
}

function loadHeadroom({ fuel, stages, air }: FuelHeadroomQuestion, lambda: SpeedCurve): LoadHeadroom {
  const points = air.map(({ speedRpm, airMassFlowKgPerS }): HeadroomPoint => {
    const demandKgPerH = fuelForAir(fuel, airMassFlowKgPerS, valueAtSpeed(lambda, speedRpm));
    const { limit } = checkedFuelSupply(fuel, speedRpm, stages);
    return {
      speedRpm,
      demandKgPerH,
      supplyKgPerH: limit.fuelKgPerH,
      limitKind: limit.kind,
      headroom: limit.fuelKgPerH / demandKgPerH - 1,
    };
  });
  return { points, shortfall: shortfall(points) };
}

function shortfall(points: readonly HeadroomPoint[]): FuelShortfall | null {
  const first = points.findIndex(({ headroom }) => headroom < 0);
  if (first < 0) return null;
  const worst = points.reduce((least, point) => (point.headroom < least.headroom ? point : least));
  return {
    kind: worst.limitKind,
    fromSpeedRpm: crossing(points[first - 1], points[first]),
    shortBy: 1 - worst.supplyKgPerH / worst.demandKgPerH,
  };
}

/** Where the headroom is used up, on the straight line between the last point with and the first without. */
function crossing(before: HeadroomPoint | undefined, after: HeadroomPoint | undefined): number {
  if (!after) throw new RangeError("A shortfall has a first point.");
  if (!before) return after.speedRpm;
  const share = before.headroom / (before.headroom - after.headroom);
  return before.speedRpm + share * (after.speedRpm - before.speedRpm);
}
