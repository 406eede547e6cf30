import type { PreparedModel } from "../model/prepare";
import type { Situation } from "../model/situation";
import type { Finding } from "./finding";

/** Everything wrong in a situation: groups first, then rules in order. */
export function findingsIn({ constraints }: PreparedModel, situation: Situation): readonly Finding[] {
  return constraints.flatMap((constraint) => constraint.findingIn(situation) ?? []);
}
