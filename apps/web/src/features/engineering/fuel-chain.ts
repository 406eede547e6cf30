import type { ForecastFuel, LoadMargins } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";
import type { ChainLink, ChainPath } from "@/design/plots/chain-types";

/** Below this headroom a stage that holds is watched. Common practice, no source. */
const WATCHED_HEADROOM = 0.1;

/** The fuel system under both loads, a link a stage, at the speed where it has least to spare. */
export function fuelChain({ sweep, sustained }: ForecastFuel): readonly ChainPath[] {
  return [
    { id: "sweep", title: "A sweep of a few seconds", links: linksOf("sweep", sweep) },
    { id: "sustained", title: "Load held for 60 to 90 s, or a tow", links: linksOf("sustained", sustained) },
  ];
}

function linksOf(load: string, { stages }: LoadMargins): readonly ChainLink[] {
  return stages.map(({ kind, name, askedKgPerH, givenKgPerH, headroom, speedRpm }) => ({
    id: `${load} ${kind}`,
    name: `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    asked: askedKgPerH / givenKgPerH,
    figures: `${figureText(askedKgPerH)} of ${figureText(givenKgPerH)} kg/h at ${figureText(speedRpm)} rpm`,
    note:
      headroom < 0 ? `short by ${percent(1 - givenKgPerH / askedKgPerH)}` : `${percent(headroom)} headroom`,
    grade: headroom < 0 ? "stop" : headroom < WATCHED_HEADROOM ? "watch" : "fit",
  }));
}

function percent(share: number): string {
  return `${figureText(Math.floor(share * 100 + 1e-9))} %`;
}
