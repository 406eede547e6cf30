import type { Problem } from "../model/problem";

/** The objective as a function of the ends. */
export function objectiveOf({ objective, due, weight }: Problem): (end: Float64Array) => number {
  if (objective === "makespan") return latestOf;
  return (end) => {
    let sum = 0;
    for (let task = 0; task < end.length; task += 1) {
      const late = (end[task] as number) - (due[task] as number); // in range
      if (late > 0) sum += late * (weight[task] as number);
    }
    return sum;
  };
}

/**
 * What a schedule made backwards from a horizon would cost forwards: how far before its release the earliest task begins,
 * on top of the makespan that it was made for.
 */
export function mirroredCost(
  release: Float64Array,
  horizon: number,
  makespan: () => number,
): (end: Float64Array) => number {
  return (end) => {
    let early = Number.NEGATIVE_INFINITY;
    for (let task = 0; task < end.length; task += 1) {
      early = Math.max(early, (end[task] as number) - horizon + (release[task] as number));
    }
    return makespan() + early;
  };
}

function latestOf(end: Float64Array): number {
  let latest = 0;
  for (let task = 0; task < end.length; task += 1) latest = Math.max(latest, end[task] as number);
  return latest;
}
