import { rangeOf, roadNames } from "./assumption-names";
import { assumptionWords } from "./assumption-words";
import type { RoadConditions } from "./road-assumptions";
import type { GivenFigures, UsedAssumption } from "./used-assumptions";

/** The road as the times use it: level, still and at the site's altitude unless it was changed on the build. */
export function roadConditions(given: GivenFigures, siteAltitudeM: number): RoadConditions {
  return {
    roadSlopePct: given.roadSlopePct ?? 0,
    roadHeadwindKmh: given.roadHeadwindKmh ?? 0,
    roadAltitudeM: given.roadAltitudeM ?? siteAltitudeM,
  };
}

/** The same, each with what is usual and what can be meant. */
export function usedRoad(given: GivenFigures, siteAltitudeM: number): readonly UsedAssumption[] {
  const usual = roadConditions({}, siteAltitudeM);
  const used = roadConditions(given, siteAltitudeM);
  return roadNames.map((name) => {
    const [, least, most] = rangeOf(name);
    const isChanged = given[name] !== undefined;
    return { name, ...assumptionWords[name], usual: usual[name], least, most, used: used[name], isChanged };
  });
}
