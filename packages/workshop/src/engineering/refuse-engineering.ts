import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";
import { withUnit } from "./assumption-words";

/** What is refused about forecasts and their assumptions, in words. */
export const refuseEngineering = refusals({
  "build-not-found": () => "There is no such build in this workshop. Find it from the list of builds.",
  stale: () => staleSentence("build sheet"),
  "assumption-out-of-range": (d: { label: string; least: number; most: number; unit: string }) =>
    `“${d.label}” must lie between ${d.least} and ${withUnit(d.most, d.unit)}: check the figure and its unit.`,
  "assumption-not-changed": (d: { label: string }) =>
    `“${d.label}” is as usual already; there is nothing to take back.`,
});
