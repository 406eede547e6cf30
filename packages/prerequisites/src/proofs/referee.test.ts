import { expect, test } from "vitest";
import type { Model } from "../model/model";
import { clingoSearch } from "../solver/clingo-search";
import { refereeTotal } from "../testing/highs-referee";
import { madeQuestion } from "../testing/instances";
import type { CatalogueProof } from "./catalogue-proof";
import { oppositeRule } from "./opposite-rule";
import { proveCatalogue } from "./prove-catalogue";

const SIZE = { items: 60, rules: 120, capacities: 5, groups: 8, chosen: 1 };

/** The referee takes its time over each question, so that it is asked about some of each kind. */
const some = <T>(list: readonly T[], most: number): readonly T[] =>
  list.filter((_, at) => at % Math.max(1, Math.floor(list.length / most)) === 0).slice(0, most);

async function isPossible(model: Model, chosen: readonly string[] = [], barred: readonly string[] = []) {
  return (await refereeTotal({ model, chosen, barred })) !== null;
}

/** Ids of rules that are said to do nothing. */
function idleIn({ findings }: CatalogueProof): readonly string[] {
  return findings.flatMap((each) =>
    each.kind === "rule-always-kept" || each.kind === "rule-never-applies" ? [each.rule] : [],
  );
}

test.each([1, 2])(
  "on made catalogue %i of 60 items an independent solver finds the same items, rules, limits and choices",
  { timeout: 90_000 },
  async (seed) => {
    const { model } = madeQuestion(seed, SIZE);
    const ids = model.items.map(({ id }) => id);
    const rules = model.rules ?? [];
    const proof = await proveCatalogue({ model }, {}, clingoSearch(60_000), { countSteps: 100 });

    const never = proof.findings.flatMap((each) => (each.kind === "item-never" ? [each.item] : []));
    const choosable = ids.filter((id) => !never.includes(id));
    for (const id of some(never, 3)) expect([id, await isPossible(model, [id])]).toEqual([id, false]);
    for (const id of some(choosable, 3)) expect([id, await isPossible(model, [id])]).toEqual([id, true]);

    const isBreakable = (id: string): Promise<boolean> =>
      isPossible({ ...model, rules: rules.map((rule) => (rule.id === id ? oppositeRule(rule) : rule)) });
    const idle = idleIn(proof);
    const said = proof.findings.flatMap((each) => ("rule" in each ? [each.rule] : []));
    const working = rules.map(({ id }) => id).filter((id) => !said.includes(id));
    for (const id of some(idle, 4)) expect([id, await isBreakable(id)]).toEqual([id, false]);
    for (const id of some(working, 4)) expect([id, await isBreakable(id)]).toEqual([id, true]);
    for (const { limit, verdict } of proof.limits) {
      expect([limit, verdict === "kept-by-itself"]).toEqual([limit, await isBreakable(limit)]);
    }

    const forcing = proof.findings.flatMap((each) => {
      return each.kind === "forces" && each.by && "item" in each.by
        ? [{ by: each.by.item, items: each.items }]
        : [];
    });
    expect(Math.min(choosable.length, working.length, forcing.length)).toBeGreaterThan(5);
    for (const { by, items } of some(forcing, 3)) {
      const open = choosable.filter((id) => id !== by && !items.includes(id));
      for (const id of some(items, 2))
        expect([by, id, await isPossible(model, [by], [id])]).toEqual([by, id, false]);
      for (const id of some(open, 2))
        expect([by, id, await isPossible(model, [by], [id])]).toEqual([by, id, true]);
    }
  },
);
