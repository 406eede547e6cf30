import type { ModelId } from "../catalogue/types";
import type { Knot } from "./smooth-curve";

/** What a vehicle does at full load: corrected torque at the hubs referred to engine speed, and its channels. */
export interface EngineCurves {
  readonly torqueNm: readonly Knot[];
  readonly boostKPa: readonly Knot[];
  readonly lambda: readonly Knot[];
  readonly fuelRailMPa: readonly Knot[];
  /** Above the air of the cell. */
  readonly intakeRiseK: readonly Knot[];
  /** Engine turns per turn of the hub in the gear that is used. */
  readonly ratio: number;
  readonly fromRpm: number;
  readonly toRpm: number;
  /** Whether power is shown corrected: a turbo-diesel that is limited by torque is not. */
  readonly corrected: boolean;
}

export type LogKind = "baseline" | "proof";

/* All figures invented; those of the 5.7 agree with the mass balance of the 2.4 L blower on it. */
const ridgewold: Readonly<Record<LogKind, EngineCurves>> = {
  baseline: {
    torqueNm: [
      [1900, 402],
      [2500, 438],
      [3200, 469],
      [3800, 491],
      [4300, 499],
      [4800, 491],
      [5300, 468],
      [5700, 438.5],
      [6100, 400],
    ],
    boostKPa: [
      [1900, -1.5],
      [4000, -2.2],
      [6100, -3],
    ],
    lambda: [
      [1900, 0.96],
      [3000, 0.92],
      [4500, 0.88],
      [6100, 0.86],
    ],
    fuelRailMPa: [
      [1900, 14],
      [3500, 19.6],
      [6100, 20],
    ],
    intakeRiseK: [
      [1900, 12],
      [4000, 9],
      [6100, 8],
    ],
    ratio: 3.36,
    fromRpm: 1900,
    toRpm: 6100,
    corrected: true,
  },
  proof: {
    torqueNm: [
      [1900, 548],
      [2500, 583],
      [3200, 611],
      [3800, 628],
      [4300, 633],
      [4800, 628],
      [5300, 613.5],
      [5700, 602],
      [5900, 593.5],
      [6100, 573],
    ],
    boostKPa: [
      [1900, 41],
      [3000, 49],
      [4500, 57],
      [6000, 64.1],
      [6100, 64.3],
    ],
    lambda: [
      [1900, 0.92],
      [3000, 0.88],
      [4500, 0.83],
      [6000, 0.8],
      [6100, 0.8],
    ],
    fuelRailMPa: [
      [1900, 15],
      [3500, 20],
      [5000, 20],
      [6100, 18.9],
    ],
    intakeRiseK: [
      [1900, 19],
      [3500, 24],
      [5000, 28],
      [6100, 32],
    ],
    ratio: 3.36,
    fromRpm: 1900,
    toRpm: 6100,
    corrected: true,
  },
};

const orrismere: Readonly<Record<LogKind, EngineCurves>> = {
  baseline: {
    torqueNm: [
      [2000, 318],
      [3000, 362],
      [4000, 392],
      [4600, 402],
      [5200, 388],
      [5800, 356],
      [6400, 310],
    ],
    boostKPa: [
      [2000, -1.2],
      [6400, -2.8],
    ],
    lambda: [
      [2000, 0.95],
      [6400, 0.87],
    ],
    fuelRailMPa: [
      [2000, 0.4],
      [6400, 0.39],
    ],
    intakeRiseK: [
      [2000, 11],
      [6400, 7],
    ],
    ratio: 3.933,
    fromRpm: 2000,
    toRpm: 6400,
    corrected: true,
  },
  proof: {
    torqueNm: [
      [2000, 421],
      [3000, 470],
      [4000, 502],
      [4600, 511],
      [5200, 503],
      [5800, 478],
      [6400, 428],
    ],
    boostKPa: [
      [2000, 51],
      [3200, 44],
      [4400, 34],
      [5200, 41],
      [6000, 52],
      [6400, 59],
    ],
    lambda: [
      [2000, 0.9],
      [4000, 0.85],
      [6400, 0.81],
    ],
    fuelRailMPa: [
      [2000, 0.45],
      [6400, 0.44],
    ],
    intakeRiseK: [
      [2000, 17],
      [6400, 27],
    ],
    ratio: 3.933,
    fromRpm: 2000,
    toRpm: 6400,
    corrected: true,
  },
};

const vale: Readonly<Record<LogKind, EngineCurves>> = {
  baseline: {
    torqueNm: [
      [1500, 322],
      [1800, 392],
      [2200, 412],
      [2600, 400],
      [3000, 348],
      [3400, 311],
      [3800, 262],
    ],
    boostKPa: [
      [1500, 82],
      [2200, 132],
      [3800, 120],
    ],
    lambda: [
      [1500, 1.28],
      [2600, 1.36],
      [3800, 1.48],
    ],
    fuelRailMPa: [
      [1500, 110],
      [3800, 172],
    ],
    intakeRiseK: [
      [1500, 22],
      [3800, 34],
    ],
    ratio: 4.255,
    fromRpm: 1500,
    toRpm: 3800,
    corrected: false,
  },
  proof: {
    torqueNm: [
      [1500, 352],
      [1800, 452],
      [2200, 488],
      [2600, 470],
      [3000, 414],
      [3400, 370],
      [3800, 312],
    ],
    boostKPa: [
      [1500, 92],
      [2200, 151],
      [3800, 138],
    ],
    lambda: [
      [1500, 1.22],
      [2600, 1.25],
      [3800, 1.36],
    ],
    fuelRailMPa: [
      [1500, 118],
      [3800, 180],
    ],
    intakeRiseK: [
      [1500, 24],
      [3800, 31],
    ],
    ratio: 4.255,
    fromRpm: 1500,
    toRpm: 3800,
    corrected: false,
  },
};

const curves: Partial<Record<ModelId, Readonly<Record<LogKind, EngineCurves>>>> = {
  "ridgewold-57": ridgewold,
  "ridgewold-57-lift": ridgewold,
  "orrismere-gt44": orrismere,
  "vale-30td": vale,
};

export function engineCurves(model: ModelId, kind: LogKind): EngineCurves {
  const found = curves[model]?.[kind];
  if (found === undefined) throw new RangeError(`No made dyno curves for ${model}.`);
  return found;
}
