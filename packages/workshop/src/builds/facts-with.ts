import { changesPower } from "../engineering/changes-power";
import { askedTorqueWith, type ForecastVehicle } from "../engineering/forecast-of-items";
import type { Catalogue } from "./catalogue-rows";

type BuildFacts = Readonly<Record<string, number | string>>;

/** The facts of a vehicle as they would be with some items: what a choice is judged by before it is made. */
export type FactsWith = (codes: readonly string[]) => BuildFacts;

/**
 * Facts in which the torque at the crank is that of the asked items' own forecast. A catalogue has hundreds of items
 * and few that change power: each set of those is forecast once.
 */
export function factsWith(facts: BuildFacts, catalogue: Catalogue, vehicle: ForecastVehicle): FactsWith {
  const powerful = catalogue.items.filter(changesPower);
  const known = new Map<string, BuildFacts>();
  return (codes) => {
    const asked = new Set(codes);
    const items = powerful.filter(({ code }) => asked.has(code));
    const key = items.map(({ code }) => code).join(" ");
    const before = known.get(key);
    if (before) return before;
    const after = { ...facts, crankTorqueNm: askedTorqueWith(vehicle, items) };
    known.set(key, after);
    return after;
  };
}
