import { decimalToNumber, multiplyDecimals } from "@buildproof/units";
import { capacityOf, demandedBy, shortfall, suppliedBy } from "../model/capacity";
import type { CapacityRule, Rule } from "../model/model";
import { prepare } from "../model/prepare";
import { situation } from "../model/situation";
import type { LimitProof, LimitUse } from "./catalogue-proof";
import { oppositeRule } from "./opposite-rule";
import { keepersOf } from "./prove-rules";
import type { Prover, Witness } from "./prover";
import { factsOfSteps } from "./spread-facts";

/** Of every limit: whether what is sold keeps to it, over all builds and vehicles. */
export async function proveLimits(
  prover: Prover,
  further: readonly CapacityRule[],
  overridable: ReadonlySet<string>,
): Promise<readonly LimitProof[]> {
  const stopping = prover.rules.filter(({ id }) => !overridable.has(id));
  const own = prover.rules.filter((rule) => rule.kind === "capacity");
  const proofs: LimitProof[] = [];
  for (const limit of [...own, ...further]) proofs.push(await proveLimit(prover, limit, stopping));
  return proofs;
}

async function proveLimit(
  prover: Prover,
  limit: CapacityRule,
  stopping: readonly Rule[],
): Promise<LimitProof> {
  const others = stopping.filter(({ id }) => id !== limit.id);
  const rules = [...others, oppositeRule(limit)];
  const nothing = { limit: limit.id, by: null, example: null };
  const answer = await prover.ask({ rules });
  if (answer.status === "unsettled") return { ...nothing, verdict: "unsettled" };
  if (answer.status === "impossible") {
    return { ...nothing, verdict: "kept-by-others", by: await keepersOf(prover, { rules }, limit.id) };
  }
  const hasRule = prover.rules.some(({ id }) => id === limit.id);
  const verdict = others.length < stopping.length ? "kept-by-itself" : hasRule ? "set-aside" : "exceeded";
  const selected = withoutNeedless(prover, answer.witness, rules);
  const items = prover.spread.model.items.map(({ id }) => id).filter((id) => selected.has(id));
  const steps = new Set(prover.spread.steps.map(({ id }) => id));
  const lowest = prover.spread.facts;
  const facts = Object.entries(factsOfSteps(prover.spread, selected)).filter(
    ([fact, value]) => value !== lowest[fact],
  );
  return {
    ...nothing,
    verdict,
    example: {
      items: items.filter((id) => !steps.has(id)),
      facts: Object.fromEntries(facts),
      ...useOf(limit, selected),
    },
  };
}

/** An example is easier to read without what could be left out of it. */
function withoutNeedless(prover: Prover, { selected }: Witness, rules: readonly Rule[]): ReadonlySet<string> {
  const { model, facts } = prover.spread;
  const { constraints } = prepare({ ...model, rules });
  let kept = selected;
  for (const id of selected) {
    const fewer = new Set([...kept].filter((other) => other !== id));
    const there = situation(fewer, facts);
    if (!constraints.some(({ findingIn }) => findingIn(there))) kept = fewer;
  }
  return kept;
}

function useOf(limit: CapacityRule, selected: ReadonlySet<string>): LimitUse {
  const capacity = capacityOf(limit);
  return {
    asked: decimalToNumber(multiplyDecimals(demandedBy(capacity, selected), capacity.demandFactor)),
    supplied: decimalToNumber(suppliedBy(capacity, selected)),
    over: decimalToNumber(shortfall(capacity, selected)),
  };
}
