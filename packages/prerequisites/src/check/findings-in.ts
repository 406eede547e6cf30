import type { PreparedModel } from "../model/prepare";
import type { Situation } from "../model/situation";
import type { Finding } from "./finding";

const restingPlaces = new WeakMap<PreparedModel, WeakMap<Situation["factOf"], readonly number[]>>();

/**
 * Everything wrong in a situation: groups first, then rules in order. A rule that no selected item
 * concerns says what it says when nothing is selected, and that is worked out once per vehicle; so a
 * large catalogue costs no more than what the selection touches.
 */
export function findingsIn(ready: PreparedModel, situation: Situation): readonly Finding[] {
  const places = new Set(brokenAtRest(ready, situation));
  for (const item of situation.selected) for (const at of ready.concerning.get(item) ?? []) places.add(at);
  return [...places].sort((a, b) => a - b).flatMap((at) => ready.constraints[at]?.findingIn(situation) ?? []);
}

/** Places of the constraints that are broken on this vehicle when nothing is selected. */
function brokenAtRest(ready: PreparedModel, { factOf }: Situation): readonly number[] {
  const byFacts = restingPlaces.get(ready) ?? new WeakMap<Situation["factOf"], readonly number[]>();
  restingPlaces.set(ready, byFacts);
  const bare: Situation = { selected: new Set(), factOf };
  const places =
    byFacts.get(factOf) ?? ready.constraints.flatMap(({ findingIn }, at) => (findingIn(bare) ? [at] : []));
  byFacts.set(factOf, places);
  return places;
}
