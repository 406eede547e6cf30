import type { Fuel } from "../fuel/fuel-properties";
import { refuseOutside } from "../question/refuse-outside";

/** Usual figure, and the ends of what can be meant. */
type Assumption = readonly [usual: number, least: number, most: number];

/**
 * What a forecast has to assume; every figure can be replaced, and comes back as used.
 *
 * @source  Common practice, no published source, except the form of the loss with spark (Heywood's and others'
 *          textbooks show it near quadratic; the factor is from memory).
 */
export const forecastAssumptions = {
  // From crank to hubs: turns a rating of 400 hp into the 350 hp at the hubs that the trade measures.
  meshEfficiency: [0.95, 0.7, 1],
  meshBand: [0.02, 0, 0.1],
  dragKwAt6000: [22, 0, 80],
  dragBandKw: [5, 0, 40],
  tyreEfficiency: [0.97, 0.8, 1],
  /** Share by which the baseline may be off: a measured one, and a maker's rating. */
  measuredBandShare: [0.01, 0, 0.2],
  ratedBandShare: [0.03, 0, 0.2],
  // The baseline's own air.
  baselineManifoldDropKPa: [2.5, 0, 30],
  baselineChargeRiseC: [10, 0, 60],
  /** Boost also sweeps out what is left in the cylinder, so the boosted engine fills better than the baseline. */
  boostedFillingGain: [1.03, 0.9, 1.15],
  airBandShare: [0.015, 0, 0.2],
  // Friction as mean pressure, and how boost adds to it.
  frictionBarAt3000: [1.3, 0.1, 5],
  frictionBarAt6000: [1.8, 0.1, 8],
  boostedFrictionFactor: [1.06, 1, 2],
  // Gas exchange.
  pumpingShare: [0.7, 0, 1],
  backPressureKPaAt6000: [15, 0, 100],
  bypassDriveKw: [2, 0, 10],
  // Mixture; the loss is quadratic away from the richest torque.
  baselineLambda: [0.88, 0.6, 1.1],
  boostedLambdaAt3000: [0.88, 0.6, 1.1],
  boostedLambdaAt6000: [0.8, 0.6, 1.1],
  bestLambda: [0.88, 0.7, 1],
  mixtureLoss: [2.5, 0, 10],
  // Spark: what knock takes at 60 kPa of boost, compression ratio 11, 98 octane, charge up to 45 °C.
  baselineRetardDeg: [0, 0, 15],
  retardAt60KPaDeg: [11, 0, 30],
  retardBandDeg: [3, 0, 15],
  sparkLossPerDeg2: [0.0006, 0, 0.002],
  retardPerRatioDeg: [3, 0, 10],
  retardPerOctaneDeg: [1, 0, 3],
  octaneNumber: [98, 80, 120],
  ethanolRetardDeg: [-6, -20, 0],
  portInjectionRetardDeg: [3, 0, 10],
  chargeRetardFromC: [45, 0, 100],
  chargeCPerRetardDeg: [6, 1, 50],
  chargeStopC: [70, 30, 150],
  /** How much of a hotter day the charge cooler's coolant follows. */
  coolantFollowsDay: [1, 0, 1],
  // Calibration alone, compression ignition.
  mechanicalEfficiency: [0.88, 0.5, 1],
  dieselLambda: [1.45, 1, 3],
  dieselLambdaBand: [0.05, 0, 0.5],
  dieselExhaustC: [640, 300, 900],
  dieselExhaustBandC: [15, 0, 100],
  dieselChargeC: [50, 0, 120],
  dieselRichLoss: [0.1, 0, 1],
  dieselBsfcGPerKwh: [215, 150, 400],
  /** A turbocharger makes up half of what thinner air takes. */
  dieselAirExponent: [0.5, 0, 1],
  referenceTempC: [25, -20, 50],
  referencePressureKPa: [100, 60, 105],
} as const satisfies Readonly<Record<string, Assumption>>;

export type AssumptionName = keyof typeof forecastAssumptions;
export type ForecastAssumptions = Readonly<Record<AssumptionName, number>>;
export type GivenAssumptions = { readonly [name in AssumptionName]?: number | undefined };

/** The names, for schemas and forms. */
// The keys of a constant table are its names.
export const assumptionNames = Object.keys(forecastAssumptions) as [AssumptionName, ...AssumptionName[]];

/** E10 is sold at 95 octane. */
const E10_OCTANE = 95;

/** The usual figures, with those given in their place. */
export function assumptionsAsUsed(fuel: Fuel, assumptions: GivenAssumptions = {}): ForecastAssumptions {
  const used = {} as Record<AssumptionName, number>; // filled below, name by name
  for (const name of assumptionNames) {
    const [usual, least, most] = forecastAssumptions[name];
    const given = assumptions[name];
    refuseOutside(given, `assumptions.${name}`, least, most);
    used[name] = given ?? (name === "octaneNumber" && fuel === "E10" ? E10_OCTANE : usual);
  }
  return used;
}
