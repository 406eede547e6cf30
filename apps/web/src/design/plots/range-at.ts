import type { CurveRange, CurveRun } from "./curve-types";

/** The range of a forecast at one of its speeds; undefined for what was measured. */
export function rangeAt({ range }: Pick<CurveRun, "range">, engineRpm: number): CurveRange | undefined {
  return range?.find((each) => each.engineRpm === engineRpm);
}
