import {
  addDecimals,
  type ExactDecimal,
  exactDecimal,
  multiplyDecimals,
  subtractDecimals,
  type WrittenDecimal,
  ZERO,
} from "@buildproof/units";
import type { CapacityRule } from "./model";

export type Amounts = ReadonlyMap<string, ExactDecimal>;

/** A capacity rule with its decimals read. */
export type Capacity = {
  readonly base: ExactDecimal;
  readonly supply: Amounts;
  readonly demand: Amounts;
  /** 1 + reservePct/100 */
  readonly demandFactor: ExactDecimal;
};

const known = new WeakMap<CapacityRule, Capacity>();

/** A rule is a value: its decimals are read once. */
export function capacityOf(rule: CapacityRule): Capacity {
  const capacity = known.get(rule) ?? readCapacity(rule);
  known.set(rule, capacity);
  return capacity;
}

function readCapacity(rule: CapacityRule): Capacity {
  const reserve = exactDecimal(rule.reservePct ?? 0);
  return {
    base: exactDecimal(rule.base ?? 0),
    supply: amountsOf(rule.supply),
    demand: amountsOf(rule.demand),
    demandFactor: addDecimals(exactDecimal(1), { ...reserve, scale: reserve.scale + 2 }),
  };
}

export function suppliedBy(capacity: Capacity, selected: ReadonlySet<string>): ExactDecimal {
  return addDecimals(capacity.base, sumOf(capacity.supply, selected));
}

export function demandedBy(capacity: Capacity, selected: ReadonlySet<string>): ExactDecimal {
  return sumOf(capacity.demand, selected);
}

/** (1 + reserve)·demand − base − supply: above zero, the rule is broken by that much. */
export function shortfall(capacity: Capacity, selected: ReadonlySet<string>): ExactDecimal {
  const wanted = multiplyDecimals(demandedBy(capacity, selected), capacity.demandFactor);
  return subtractDecimals(wanted, suppliedBy(capacity, selected));
}

function sumOf(amounts: Amounts, selected: ReadonlySet<string>): ExactDecimal {
  let sum = ZERO;
  // Whichever is shorter is gone through: a rule names a few items, and a selection may be the whole catalogue.
  if (amounts.size < selected.size) {
    for (const [id, amount] of amounts) if (selected.has(id)) sum = addDecimals(sum, amount);
    return sum;
  }
  for (const id of selected) {
    const amount = amounts.get(id);
    if (amount) sum = addDecimals(sum, amount);
  }
  return sum;
}

function amountsOf(written: Readonly<Record<string, WrittenDecimal>> = {}): Amounts {
  return new Map(Object.entries(written).map(([id, amount]) => [id, exactDecimal(amount)]));
}
