import {
  assumptionNames as engineNames,
  type Forecast,
  type ForecastAssumptions,
  type ForecastQuestion,
} from "@buildproof/engineering";
import { type AssumptionName, type ForecastAssumptionName, forecastNames, rangeOf } from "./assumption-names";
import { assumptionWords } from "./assumption-words";
import { type OwnAssumptions, ownAssumptions } from "./own-assumptions";
import type { PowerChange } from "./power-change";

/** Assumptions changed on a build, by name. */
export type GivenFigures = Readonly<Partial<Record<AssumptionName, number>>>;

/** One assumption as a forecast used it. */
export type UsedAssumption = {
  readonly name: AssumptionName;
  readonly label: string;
  readonly unit: string;
  readonly group: string;
  /** The trade's figure, or that of the model and the chosen items. */
  readonly usual: number;
  readonly least: number;
  readonly most: number;
  readonly used: number;
  readonly isChanged: boolean;
};
export type UsedAssumptions = readonly UsedAssumption[];

/** Those of the forecast, and those that the sheet adds. */
export function splitAssumptions(given: GivenFigures): {
  readonly engine: Partial<ForecastAssumptions>;
  readonly own: OwnAssumptions;
} {
  const engine: Partial<Record<keyof ForecastAssumptions, number>> = {};
  for (const name of engineNames) {
    const value = given[name];
    if (value !== undefined) engine[name] = value;
  }
  return {
    engine,
    own: {
      breathingBsfcGPerKwh: given.breathingBsfcGPerKwh ?? ownAssumptions.breathingBsfcGPerKwh[0],
      boostedBsfcGPerKwh: given.boostedBsfcGPerKwh ?? ownAssumptions.boostedBsfcGPerKwh[0],
      sustainedEnrichment: given.sustainedEnrichment ?? ownAssumptions.sustainedEnrichment[0],
    },
  };
}

type Used = {
  readonly question: ForecastQuestion;
  readonly change: PowerChange;
  readonly given: GivenFigures;
  readonly engine: Forecast["assumptions"];
};

/** The assumptions that this forecast turns on, as used. */
export function usedAssumptions({ question, change, given, engine }: Used): UsedAssumptions {
  const own = splitAssumptions(given).own;
  const figures: Readonly<Record<ForecastAssumptionName, number>> = { ...engine, ...own };
  return forecastNames
    .filter((name) => concerns(name, question))
    .map((name) => {
      const [trade, least, most] = rangeOf(name);
      const isChanged = given[name] !== undefined;
      const usual =
        name in change.assume ? (change.assume[name as keyof ForecastAssumptions] ?? trade) : trade;
      return {
        name,
        ...assumptionWords[name],
        usual: isChanged ? usual : figures[name],
        least,
        most,
        used: figures[name],
        isChanged,
      };
    });
}

const dieselOnly: ReadonlySet<ForecastAssumptionName> = new Set<ForecastAssumptionName>([
  "mechanicalEfficiency",
  "dieselLambda",
  "dieselLambdaBand",
  "dieselExhaustC",
  "dieselExhaustBandC",
  "dieselChargeC",
  "dieselRichLoss",
  "dieselBsfcGPerKwh",
  "dieselAirExponent",
  "referenceTempC",
  "referencePressureKPa",
]);
const everywhere: ReadonlySet<ForecastAssumptionName> = new Set<ForecastAssumptionName>([
  "meshEfficiency",
  "meshBand",
  "dragKwAt6000",
  "dragBandKw",
]);

/** Of an engine that breathes by itself with another exhaust or calibration. */
const breathingToo: ReadonlySet<ForecastAssumptionName> = new Set<ForecastAssumptionName>([
  "baselineManifoldDropKPa",
  "baselineChargeRiseC",
  "airBandShare",
  "frictionBarAt3000",
  "frictionBarAt6000",
  "pumpingShare",
  "backPressureKPaAt6000",
  "baselineLambda",
  "bestLambda",
  "mixtureLoss",
  "baselineRetardDeg",
  "sparkLossPerDeg2",
  "referenceTempC",
  "referencePressureKPa",
  "breathingBsfcGPerKwh",
]);

/** Whether a figure has any say in this forecast. */
function concerns(
  name: ForecastAssumptionName,
  { baseline, fuel, injection, blower, breathingChange }: ForecastQuestion,
): boolean {
  if (everywhere.has(name)) return true;
  if (name === "tyreEfficiency") return false;
  if (name === "measuredBandShare") return baseline.at !== "crank";
  if (name === "ratedBandShare") return baseline.at === "crank";
  if (breathingChange) return breathingToo.has(name);
  if (name === "breathingBsfcGPerKwh") return false;
  if (name === "ethanolRetardDeg") return fuel === "E85";
  if (name === "portInjectionRetardDeg") return injection === "port";
  return dieselOnly.has(name) === !blower;
}
