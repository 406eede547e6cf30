import type { WrittenDecimal } from "@buildproof/units";
import { conditionTest } from "../model/condition";
import { groupConstraint, ruleConstraint } from "../model/constraint";
import type { Condition, Facts, Group } from "../model/model";
import { situation } from "../model/situation";
import type { CatalogueToProve, VehiclesToProve } from "../proofs/catalogue-proof";
import type { FactRange } from "../proofs/fact-range";

/** One build on one vehicle, with everything that is wrong with it. */
export type ProofRow = {
  readonly selected: ReadonlySet<string>;
  readonly facts: Facts;
  readonly broken: ReadonlySet<string>;
  readonly holds: (condition: Condition) => boolean;
};

/** Every build of a small catalogue on every vehicle of a range whose limits are quarters. */
export function proofTable(
  { model, limits = [] }: CatalogueToProve,
  { facts = {}, barred = [] }: VehiclesToProve,
): readonly ProofRow[] {
  const constraints = [
    ...(model.groups ?? []).map(groupConstraint),
    ...[...(model.rules ?? []), ...limits].map(ruleConstraint),
  ];
  const open = model.items.map(({ id }) => id).filter((id) => !barred.includes(id));
  const vehicles = everyVehicle(Object.entries(facts));
  return Array.from({ length: 2 ** open.length }, (_, set) => {
    const selected = new Set(open.filter((_id, at) => (set >> at) & 1));
    return vehicles.map((vehicle): ProofRow => {
      const there = situation(selected, vehicle);
      const broken = constraints.filter(({ findingIn }) => findingIn(there)).map(({ id }) => id);
      const holds = (condition: Condition): boolean => conditionTest(condition)(there);
      return { selected, facts: vehicle, broken: new Set(broken), holds };
    });
  }).flat();
}

export function keepsPick({ pick, items }: Group, selected: ReadonlySet<string>): boolean {
  const count = items.filter((id) => selected.has(id)).length;
  if (pick === "at-least-one") return count >= 1;
  return pick === "at-most-one" ? count <= 1 : count === 1;
}

function everyVehicle(ranges: readonly (readonly [string, FactRange])[]): readonly Facts[] {
  const [first, ...rest] = ranges;
  if (!first) return [{}];
  const [fact, range] = first;
  return everyVehicle(rest).flatMap((other) => valuesOf(range).map((value) => ({ ...other, [fact]: value })));
}

function valuesOf(range: FactRange): readonly WrittenDecimal[] {
  if (typeof range !== "object") return [range];
  if ("oneOf" in range) return range.oneOf;
  const from = Number(range.from);
  return Array.from({ length: (Number(range.to) - from) * 4 + 1 }, (_, quarters) => from + quarters / 4);
}
