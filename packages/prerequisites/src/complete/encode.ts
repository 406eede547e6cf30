import {
  coefficientAt,
  type ExactDecimal,
  multiplyDecimals,
  subtractDecimals,
  ZERO,
} from "@buildproof/units";
import { capacityOf } from "../model/capacity";
import type { CapacityRule, Facts, Model } from "../model/model";
import { situation } from "../model/situation";
import { clausesOf } from "./clauses-of";
import type { Clause, Encoding, Literal, Sum, Term } from "./encoding";
import { anyOf, formulaOf } from "./formula";

/** A model on one vehicle as clauses and sums of whole numbers; nothing is rounded on the way. */
export function encode(model: Model, facts: Facts): Encoding {
  const { factOf } = situation([], facts);
  const literals = new Map(model.items.map(({ id }, index) => [id, index + 1]));
  const literalOf = (id: string): Literal => {
    const literal = literals.get(id);
    if (literal === undefined) throw new RangeError(`There is no item "${id}".`);
    return literal;
  };
  const clauses: Clause[] = [];
  const sums: Sum[] = [];
  let variables = model.items.length;
  const fresh = (): Literal => {
    variables += 1;
    return variables;
  };
  const groups = model.groups ?? [];
  groups.forEach((group, origin) => {
    const members = group.items.map(literalOf);
    if (group.pick !== "at-most-one") clauses.push({ origin, literals: members });
    if (group.pick !== "at-least-one" && members.length > 1) sums.push(atMostOne(members, origin));
  });
  (model.rules ?? []).forEach((rule, index) => {
    const origin = groups.length + index;
    if (rule.kind === "capacity") {
      sums.push(sumOf(rule, origin, literalOf));
      return;
    }
    const when = rule.when ? formulaOf(rule.when, false, { literalOf, factOf }) : false;
    const then = formulaOf(rule.then, rule.kind === "needs", { literalOf, factOf });
    const found = clausesOf(anyOf([when, then]), fresh);
    clauses.push(...found.map((each) => ({ origin, literals: each })));
  });
  return { items: model.items.length, variables, clauses, sums };
}

/** All but one are out. */
function atMostOne(members: readonly Literal[], origin: number): Sum {
  const terms = members.map((member) => ({ literal: -member, weight: 1n }));
  return { origin, terms, least: BigInt(members.length - 1) };
}

/** Σ (supply − factor·demand) ≥ −base, brought to one scale; a negative share counts for the item left out. */
function sumOf(rule: CapacityRule, origin: number, literalOf: (id: string) => Literal): Sum {
  const { base, supply, demand, demandFactor } = capacityOf(rule);
  const shares = [...new Set([...supply.keys(), ...demand.keys()])].map((id) => {
    const asked = multiplyDecimals(demand.get(id) ?? ZERO, demandFactor);
    return { literal: literalOf(id), share: subtractDecimals(supply.get(id) ?? ZERO, asked) };
  });
  const scale = Math.max(base.scale, ...shares.map(({ share }) => share.scale));
  const whole = (value: ExactDecimal): bigint => coefficientAt(value, scale);
  let least = -whole(base);
  const terms: Term[] = [];
  for (const { literal, share } of shares) {
    const weight = whole(share);
    if (weight > 0n) terms.push({ literal, weight });
    if (weight < 0n) {
      terms.push({ literal: -literal, weight: -weight });
      least -= weight;
    }
  }
  return { origin, terms, least };
}
