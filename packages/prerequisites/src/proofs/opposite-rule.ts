// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { addDecimals, decimalText, type ExactDecimal, multiplyDecimals } from "@buildproof/units";
import { type Amounts, capacityOf } from "../model/capacity";
import type { CapacityRule, Condition, Rule } from "../model/model";

/** A rule of the same id that holds exactly where this one is broken. */
export function oppositeRule(rule: Rule): Rule {
  if (rule.kind === "capacity") return oppositeCapacity(rule);
  const broken: Condition = rule.kind === "needs" ? { not: rule.then } : rule.then;
  return { id: rule.id, kind: "needs", then: rule.when ? { all: [rule.when, broken] } : broken };
}

/** Demand and supply change sides; with one unit of the last decimal place more, "at least" becomes "more than". */
function oppositeCapacity(rule: CapacityRule): CapacityRule {
  const { base, supply, demand, demandFactor } = capacityOf(rule);
  const asked = new Map([...demand].map(([id, amount]) => [id, multiplyDecimals(amount, demandFactor)]));
  const scale = Math.max(...[base, ...supply.values(), ...asked.values()].map((each) => each.scale));
  const lowered = addDecimals(base, { coefficient: 1n, scale });
  return {
    id: rule.id,
    kind: "capacity",
    base: decimalText({ ...lowered, coefficient: -lowered.coefficient }),
    supply: written(asked),
    demand: written(supply),
  };
}

function written(amounts: Amounts | ReadonlyMap<string, ExactDecimal>): Record<string, string> {
  return Object.fromEntries([...amounts].map(([id, amount]) => [id, decimalText(amount)]));
}
