import { checkPrerequisites, completePrerequisites, type Facts } from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { describe, expect, test } from "vitest";
import { catalogue } from "./catalogue";
import { factsOf, itemsThatDoNotFit, prerequisiteModel } from "./prerequisite-model";
import { type CapacityRule, type CatalogueRule, type Condition, commonPractice, type ModelId } from "./types";

/** A healthy vehicle of the model, whose owner can buy what it runs on. */
const healthy = (model: ModelId): Facts => ({
  ...factsOf(model),
  fuelOctaneRon: 98,
  odometerKm: 24_310,
  e85SoldNearby: 1,
});

test("the catalogue has the breadth of a real workshop's, in every system and of every kind", () => {
  expect(catalogue.models).toHaveLength(5);
  expect(catalogue.items.length).toBeGreaterThanOrEqual(120);
  expect(catalogue.rules.length).toBeGreaterThanOrEqual(150);
  expect(catalogue.packages.length).toBeGreaterThanOrEqual(8);
  const systems = new Map(catalogue.items.map(({ system }) => [system, 0]));
  for (const { system } of catalogue.items) systems.set(system, (systems.get(system) ?? 0) + 1);
  for (const [system, count] of systems) expect(count, system).toBeGreaterThanOrEqual(6);
  expect(new Set(catalogue.items.map(({ kind }) => kind)).size).toBe(8);
});

describe("every item", () => {
  const complete = clingoSearch(20_000);

  test("can be chosen on some vehicle, with what it asks for", { timeout: 120_000 }, async () => {
    const nowhere: string[] = [];
    for (const { id, fits } of catalogue.items) {
      const answers = [];
      for (const model of fits) {
        const { status } = await completePrerequisites(
          {
            model: prerequisiteModel(model),
            chosen: [id],
            barred: itemsThatDoNotFit(model),
            facts: healthy(model),
          },
          complete,
        );
        answers.push(status);
        if (status === "optimal") break;
      }
      if (!answers.includes("optimal")) nowhere.push(id);
    }
    expect(nowhere).toEqual([]);
  });

  test("that seals, stretches or crushes is asked for by the work that removes it", () => {
    const asked = new Set(
      catalogue.rules.flatMap((rule) => (rule.kind === "needs" ? itemsIn(rule.then) : [])),
    );
    const oneUse = catalogue.items.filter((item) => item.oneUse && item.operations.length === 0);
    expect(oneUse.filter(({ id }) => !asked.has(id)).map(({ id }) => id)).toEqual([]);
  });
});

describe("every rule", () => {
  test("can apply to a vehicle that it is for", () => {
    const idle = catalogue.rules.filter((rule) => !rule.models.some((model) => applies(rule, model)));
    expect(idle.map(({ id }) => id)).toEqual([]);
  });

  test("says why in a sentence, and where it comes from; law says whom to ask", () => {
    for (const { id, because, source } of catalogue.rules) {
      expect(because, id).toMatch(/^[A-Z0-9].{20,}\.$/);
      if (source !== commonPractice) expect(source, id).toMatch(/Confirm with the authority/);
    }
  });

  test("about emission equipment is never overridden", () => {
    const rules = catalogue.rules.filter(({ source }) => source.startsWith("ADR 79"));
    expect(rules.filter(({ kind }) => kind === "excludes").length).toBeGreaterThanOrEqual(4);
    expect(rules.filter(({ kind, safety }) => kind === "excludes" && !safety)).toEqual([]);
  });
});

describe("a pulley of its own", () => {
  const use = (items: readonly string[], rule: string) =>
    checkPrerequisites(prerequisiteModel("ridgewold-57"), items, healthy("ridgewold-57")).findings.find(
      (finding) => finding.rule === rule,
    );

  test("that is milder asks less of the pump: the shortfall falls by the difference and its reserve", () => {
    const before = use(["blower-24-92"], "high-pressure-fuel")?.shortBy ?? 0;
    const after = use(["blower-24-92", "pulley-24-98"], "high-pressure-fuel")?.shortBy ?? 0;
    expect(before - after).toBeCloseTo(9.9, 9);
  });

  test("that is stronger is more than the 10-rib belt holds, until the idler wraps it", () => {
    const stronger = ["blower-24-92", "pulley-24-86", "belt-10-rib"];
    expect(use(stronger, "belt-drive")?.shortBy).toBeCloseTo(6.35, 9);
    expect(use([...stronger, "belt-wrap-idler"], "belt-drive")).toBeUndefined();
  });
});

/** Whether some selection on the model breaks the rule. */
function applies(rule: CatalogueRule, modelId: ModelId): boolean {
  const barred = new Set(itemsThatDoNotFit(modelId));
  const model = prerequisiteModel(modelId);
  const breaks = ({ items, facts }: Way) =>
    items.every((item) => !barred.has(item)) &&
    checkPrerequisites(model, [...new Set(items)], { ...healthy(modelId), ...facts }).findings.some(
      (finding) => finding.rule === rule.id,
    );
  if (rule.kind === "capacity") return breaks(mostAsked(rule, barred));
  const whens = rule.when ? waysTo(rule.when, true) : [nothing];
  return pairs(whens, waysTo(rule.then, rule.kind === "excludes")).some(breaks);
}

type Way = { readonly items: readonly string[]; readonly facts: Facts };
const nothing: Way = { items: [], facts: {} };

const pairs = (ones: readonly Way[], others: readonly Way[]): readonly Way[] =>
  ones.flatMap((one) =>
    others.map((other) => ({
      items: [...one.items, ...other.items],
      facts: { ...one.facts, ...other.facts },
    })),
  );

/** Some of the ways to make a condition true, or false: items chosen and facts set. */
function waysTo(condition: Condition, is: boolean): readonly Way[] {
  if ("item" in condition) return is ? [{ items: [condition.item], facts: {} }] : [nothing];
  if ("fact" in condition) return [{ items: [], facts: { [condition.fact]: is ? condition.atLeast : 0 } }];
  if ("not" in condition) return waysTo(condition.not, !is);
  const parts = "all" in condition ? condition.all : condition.any;
  return "all" in condition === is
    ? parts.map((part) => waysTo(part, is)).reduce(pairs, [nothing])
    : parts.flatMap((part) => waysTo(part, is));
}

/** Of each group what asks most, and everything else that asks. */
function mostAsked(rule: CapacityRule, barred: ReadonlySet<string>): Way {
  const asking = Object.entries(rule.demand)
    .map(([id, amount]) => ({ id, amount: typeof amount === "number" ? amount : amount.whole }))
    .filter(({ id }) => !barred.has(id))
    .toSorted((one, other) => other.amount - one.amount);
  const items = asking.filter(({ id }, at) =>
    catalogue.groups.every(
      (group) =>
        !group.items.includes(id) || !asking.slice(0, at).some((more) => group.items.includes(more.id)),
    ),
  );
  return { items: items.map(({ id }) => id), facts: {} };
}

function itemsIn(condition: Condition): readonly string[] {
  if ("item" in condition) return [condition.item];
  if ("fact" in condition) return [];
  if ("not" in condition) return itemsIn(condition.not);
  return ("all" in condition ? condition.all : condition.any).flatMap(itemsIn);
}
