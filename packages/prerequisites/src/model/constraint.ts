import { compareDecimals, decimalToNumber, type ExactDecimal, ZERO } from "@buildproof/units";
import type { Finding } from "../check/finding";
import { type Amounts, capacityOf, shortfall } from "./capacity";
import { conditionTest, namedItems } from "./condition";
import type { CapacityRule, Condition, ExcludesRule, Group, NeedsRule, Rule } from "./model";
import type { Situation } from "./situation";

/** A rule or group made ready to be asked many times. */
export type Constraint = {
  readonly id: string;
  /** What is wrong in a situation, or null. */
  readonly findingIn: (situation: Situation) => Finding | null;
  /** Items whose selection can change the answer, in the order the rule names them. */
  readonly concerns: readonly string[];
  /** Of these, items that being added can clear it; the others can only break it. */
  readonly helpers: readonly string[];
};

const ALWAYS = (): boolean => true;

export function groupConstraint(group: Group): Constraint {
  const allowed = {
    "at-most-one": (count: number) => count <= 1,
    "exactly-one": (count: number) => count === 1,
    "at-least-one": (count: number) => count >= 1,
  }[group.pick];
  const because = `Choose ${group.pick.replaceAll("-", " ")} of ${group.items.join(", ")}.`;
  return {
    id: group.id,
    concerns: group.items,
    helpers: group.pick === "at-most-one" ? [] : group.items,
    findingIn({ selected }) {
      const items = group.items.filter((id) => selected.has(id));
      return allowed(items.length) ? null : { rule: group.id, kind: "group", items, because };
    },
  };
}

export function ruleConstraint(rule: Rule): Constraint {
  return rule.kind === "capacity" ? capacityConstraint(rule) : conditionConstraint(rule);
}

function conditionConstraint(rule: NeedsRule | ExcludesRule): Constraint {
  const when = rule.when ? conditionTest(rule.when) : ALWAYS;
  const then = conditionTest(rule.then);
  const thenMustBe = rule.kind === "needs";
  const named = namedItems(rule.when);
  const concerns = [...new Set([...named, ...namedItems(rule.then)])];
  // What a `needs` is about is only made so by its own items, unless its condition denies some.
  const isPlain = thenMustBe && !(rule.when && denies(rule.when));
  return {
    id: rule.id,
    concerns,
    helpers: isPlain ? namedItems(rule.then) : concerns,
    findingIn(situation) {
      if (!when(situation) || then(situation) === thenMustBe) return null;
      const items = named.filter((id) => situation.selected.has(id));
      return { rule: rule.id, kind: rule.kind, items, because: rule.because ?? "" };
    },
  };
}

function capacityConstraint(rule: CapacityRule): Constraint {
  const capacity = capacityOf(rule);
  const demanders = [...capacity.demand.keys()];
  const gives = (sign: 1 | -1) => (amount: ExactDecimal) => sign * compareDecimals(amount, ZERO) > 0;
  return {
    id: rule.id,
    concerns: [...new Set([...capacity.supply.keys(), ...demanders])],
    helpers: [...new Set([...having(capacity.supply, gives(1)), ...having(capacity.demand, gives(-1))])],
    findingIn({ selected }) {
      const short = shortfall(capacity, selected);
      if (compareDecimals(short, ZERO) <= 0) return null;
      const items = demanders.filter((id) => selected.has(id));
      const shortBy = decimalToNumber(short);
      return { rule: rule.id, kind: "capacity", items, because: rule.because ?? "", shortBy };
    },
  };
}

function having(amounts: Amounts, is: (amount: ExactDecimal) => boolean): readonly string[] {
  return [...amounts].flatMap(([id, amount]) => (is(amount) ? [id] : []));
}

function denies(condition: Condition): boolean {
  if ("all" in condition) return condition.all.some(denies);
  if ("any" in condition) return condition.any.some(denies);
  return "not" in condition;
}
