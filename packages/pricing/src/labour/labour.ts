import { addDecimals, decimalToNumber, exactDecimal, subtractDecimals, sumDecimals } from "@buildproof/units";
import { accessClosure } from "./access-closure";
import type { Labour, LabourPlan } from "./labour-plan";

/**
 * Hours of a set of operations with the access work they share counted once: taking the front off
 * for the cooler also serves the blower.
 *
 * @source Common practice of the trade, no published source.
 * @throws ImpossibleInputError for an unknown or doubled id, or access work that needs itself.
 */
export function labour(plan: LabourPlan): Labour {
  const closure = accessClosure(plan);
  const accessHoursOf = (used: ReadonlySet<string>) =>
    sumDecimals(plan.access.filter(({ id }) => used.has(id)).map(({ hours }) => exactDecimal(hours)));
  const usedBy = (ids: readonly string[] = []) => new Set(ids.flatMap((id) => [...(closure.get(id) ?? [])]));

  const used = usedBy(plan.operations.flatMap(({ access = [] }) => access));
  const accessHours = accessHoursOf(used);
  const ownHours = sumDecimals(plan.operations.map(({ hours }) => exactDecimal(hours)));
  const soldApart = sumDecimals(plan.operations.map(({ access }) => accessHoursOf(usedBy(access))));
  return {
    hours: decimalToNumber(addDecimals(ownHours, accessHours)),
    accessHours: decimalToNumber(accessHours),
    ownHours: decimalToNumber(ownHours),
    savedHours: decimalToNumber(subtractDecimals(soldApart, accessHours)),
    accessUsed: plan.access.map(({ id }) => id).filter((id) => used.has(id)),
  };
}
