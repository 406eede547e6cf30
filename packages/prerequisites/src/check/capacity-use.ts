import {
  coefficientAt,
  compareDecimals,
  decimalToNumber,
  type ExactDecimal,
  quotientToNumber,
  subtractDecimals,
  ZERO,
} from "@buildproof/units";
import {
  type Amounts,
  type Capacity,
  capacityOf,
  demandedBy,
  shortfall,
  suppliedBy,
} from "../model/capacity";
import { checkChoice } from "../model/check-ids";
import type { CapacityRule, Model } from "../model/model";
import { prepare } from "../model/prepare";
import type { CapacityUse, Contribution } from "./capacity-use-figures";

/**
 * Asked against given for every capacity of the model, in the order of its rules.
 * The words: asked = demand ÷ supply; headroom = supply ÷ demand − 1; short by = 1 − supply ÷ demand.
 */
export function capacityUse(model: Model, chosen: readonly string[]): readonly CapacityUse[] {
  checkChoice(prepare(model).itemIds, chosen, []);
  const selected = new Set(chosen);
  return (model.rules ?? [])
    .filter((rule) => rule.kind === "capacity")
    .map((rule) => useOf(rule, capacityOf(rule), selected));
}

function useOf(rule: CapacityRule, capacity: Capacity, selected: ReadonlySet<string>): CapacityUse {
  const supply = suppliedBy(capacity, selected);
  const demand = demandedBy(capacity, selected);
  const isShort = compareDecimals(demand, supply) > 0;
  return {
    rule: rule.id,
    quantity: rule.quantity ?? "",
    because: rule.because ?? "",
    base: decimalToNumber(capacity.base),
    supply: decimalToNumber(supply),
    demand: decimalToNumber(demand),
    reservePct: Number(rule.reservePct ?? 0),
    asked: share(demand, supply),
    headroom: share(subtractDecimals(supply, demand), demand),
    shortBy: isShort ? share(subtractDecimals(demand, supply), demand) : null,
    met: compareDecimals(shortfall(capacity, selected), ZERO) <= 0,
    suppliers: contributions(capacity.supply, selected),
    demanders: contributions(capacity.demand, selected),
  };
}

function share(part: ExactDecimal, whole: ExactDecimal): number | null {
  if (compareDecimals(whole, ZERO) <= 0) return null;
  const scale = Math.max(part.scale, whole.scale);
  return quotientToNumber(coefficientAt(part, scale), coefficientAt(whole, scale));
}

function contributions(amounts: Amounts, selected: ReadonlySet<string>): readonly Contribution[] {
  return [...amounts]
    .filter(([item]) => selected.has(item))
    .map(([item, amount]) => ({ item, amount: decimalToNumber(amount) }));
}
