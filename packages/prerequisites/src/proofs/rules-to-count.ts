import type { CapacityRule, Rule } from "../model/model";
import { oppositeRule } from "./opposite-rule";
import type { Prover } from "./prover";

/**
 * The rules without those capacities that the rest keeps anyhow: the builds are the same, and a count has fewer
 * sums to carry along. The widest go first, for they cost most.
 */
export async function rulesToCount(prover: Prover): Promise<readonly Rule[]> {
  let { rules } = prover;
  const capacities = rules.filter((rule) => rule.kind === "capacity");
  for (const rule of capacities.sort((a, b) => widthOf(b) - widthOf(a))) {
    const at = rules.indexOf(rule);
    const { status } = await prover.ask({ rules: rules.with(at, oppositeRule(rule)) });
    if (status === "impossible") rules = rules.toSpliced(at, 1);
  }
  return rules;
}

function widthOf({ supply = {}, demand = {} }: CapacityRule): number {
  return new Set([...Object.keys(supply), ...Object.keys(demand)]).size;
}
