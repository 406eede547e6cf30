import {
  assumptionNames as engineNames,
  type ForecastAssumptions,
  forecastAssumptions,
} from "@buildproof/engineering";
import { type OwnAssumptionName, ownAssumptions } from "./own-assumptions";
import { type RoadAssumptionName, roadAssumptions } from "./road-assumptions";

/** Every figure that a forecast on the build sheet assumes. */
export type ForecastAssumptionName = keyof ForecastAssumptions | OwnAssumptionName;
/** Those, and those of the road. */
export type AssumptionName = ForecastAssumptionName | RoadAssumptionName;

// The keys of a constant table are its names.
const ownNames = Object.keys(ownAssumptions) as readonly OwnAssumptionName[];
export const roadNames = Object.keys(roadAssumptions) as readonly RoadAssumptionName[];

export const forecastNames: readonly ForecastAssumptionName[] = [...engineNames, ...ownNames];
export const assumptionNames: readonly [AssumptionName, ...AssumptionName[]] = [
  ...engineNames,
  ...ownNames,
  ...roadNames,
];

/** The trade's figure, and the ends of what can be meant. */
export function rangeOf(name: AssumptionName): readonly [usual: number, least: number, most: number] {
  return { ...forecastAssumptions, ...ownAssumptions, ...roadAssumptions }[name];
}
