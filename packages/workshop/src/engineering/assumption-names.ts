import {
  assumptionNames as engineNames,
  type ForecastAssumptions,
  forecastAssumptions,
} from "@buildproof/engineering";
import { type OwnAssumptionName, ownAssumptions } from "./own-assumptions";

/** Every figure that a forecast on the build sheet assumes. */
export type AssumptionName = keyof ForecastAssumptions | OwnAssumptionName;

// The keys of a constant table are its names.
const ownNames = Object.keys(ownAssumptions) as readonly OwnAssumptionName[];

export const assumptionNames: readonly [AssumptionName, ...AssumptionName[]] = [...engineNames, ...ownNames];

/** The trade's figure, and the ends of what can be meant. */
export function rangeOf(name: AssumptionName): readonly [usual: number, least: number, most: number] {
  return { ...forecastAssumptions, ...ownAssumptions }[name];
}
