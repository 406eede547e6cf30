import { checkPrerequisites, fixesFor } from "@buildproof/prerequisites";
import { labour } from "@buildproof/pricing";
import { describe, expect, test } from "vitest";
import { catalogue } from "./catalogue";
import { hourRates } from "./hour-rates";
import { factsOf, itemsThatDoNotFit, prerequisiteModel } from "./prerequisite-model";
import type { Condition, ModelId } from "./types";

const standard = (model: ModelId) => ({ ...factsOf(model), fuelOctaneRon: 98, odometerKm: 24_310 });

function labourOf(operationIds: readonly string[]) {
  const operations = catalogue.operations
    .filter((operation) => operationIds.includes(operation.id))
    .map(({ id, ownHours, access }) => ({ id, hours: ownHours, access }));
  return labour({
    access: catalogue.access.map(({ id, hours, needs }) => ({ id, hours, needs })),
    operations,
  });
}

function packageNamed(id: string) {
  const found = catalogue.packages.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`No package ${id}.`);
  return found;
}

const itemsOf = (id: string) => catalogue.items.filter((item) => packageNamed(id).items.includes(item.id));
const operationsOf = (id: string) => itemsOf(id).flatMap((item) => item.operations);

/* Expected figures below are common practice, no source; they guard the demo against drifting apart. */
describe("the 2.4 L blower chosen alone on a standard Ridgewold 5.7", () => {
  const model = prerequisiteModel("ridgewold-57");
  const facts = standard("ridgewold-57");
  const barred = itemsThatDoNotFit("ridgewold-57");
  const { findings } = checkPrerequisites(model, ["blower-24-92"], facts, barred);

  test("leaves the high-pressure pump 27.6 kg/h short: 146 with 10 % reserve against 133", () => {
    expect(findings.find((finding) => finding.rule === "high-pressure-fuel")?.shortBy).toBe(27.6);
  });

  test("misses everything else that a boosted build needs", () => {
    expect(findings.map((finding) => finding.rule).sort()).toEqual([
      "belt-drive",
      "calibration-for-boost",
      "certificate-for-boost",
      "commission-after-boost",
      "cooler-for-boost",
      "gearbox-torque",
      "high-pressure-fuel",
      "inspect-before-boost",
      "lines-often-forgotten",
      "measure-what-is-promised",
      "pin-for-drive-power",
      "plugs-for-high-boost",
      "re-torque-after-boost",
    ]);
  });

  test("has a fix for every finding, and the pump's brings its one-use pipes, follower check and oil", () => {
    for (const finding of findings) {
      expect(fixesFor(model, ["blower-24-92"], facts, finding, { barred }), finding.rule).not.toHaveLength(0);
    }
    const pump = findings.find((finding) => finding.rule === "high-pressure-fuel");
    if (pump === undefined) throw new Error("The pump is not short.");
    const [cheapest] = fixesFor(model, ["blower-24-92"], facts, pump, { barred });
    expect(cheapest?.add).toEqual(["hp-pump-upgrade", "hp-pipes-and-seals", "follower-check", "oil-service"]);
  });
});

describe("the packages", () => {
  const offers = catalogue.packages.flatMap((offer) => offer.models.map((model) => ({ offer, model })));

  test.each(offers)("$offer.name on $model is complete and fits", ({ offer, model }) => {
    const barred = itemsThatDoNotFit(model);
    expect(offer.items.filter((item) => barred.includes(item))).toEqual([]);
    expect(
      checkPrerequisites(prerequisiteModel(model), offer.items, standard(model), barred).findings,
    ).toEqual([]);
  });

  test("Long Grade 2.4 falls apart again when any of its parts is left out", () => {
    const { items } = packageNamed("long-grade-24");
    for (const left of items.filter((item) => item !== "blower-24-92")) {
      const rest = items.filter((item) => item !== left);
      expect(
        checkPrerequisites(prerequisiteModel("ridgewold-57"), rest, standard("ridgewold-57")).ok,
        left,
      ).toBe(false);
    }
  });

  test("Long Grade 2.4 with a 3,000 kg trailer is over its payload until the gross-mass upgrade is fitted", () => {
    const towing = [...packageNamed("long-grade-24").items, ...packageNamed("tow-ready").items];
    const check = (items: readonly string[]) =>
      checkPrerequisites(prerequisiteModel("ridgewold-57"), items, standard("ridgewold-57")).findings.map(
        ({ rule }) => rule,
      );
    expect(check(towing)).toEqual(["payload"]);
    expect(check([...towing, "gvm-kit"])).toEqual(["plate-with-gross-mass"]);
    expect(check([...towing, "gvm-kit", "mass-plate"])).toEqual([]);
  });
});

describe("hours and money", () => {
  test("access work shared by the boosted operations is counted once: 29.8 h together, 36.8 h apart", () => {
    const together = labourOf([
      "fit-blower-24",
      "fit-charge-cooler",
      "pin-crank-pulley",
      "fit-belt-and-tensioner",
      "fit-hp-pump",
      "fit-plugs",
      "flash-engine-controller",
    ]);
    expect(together).toMatchObject({ hours: 29.8, ownHours: 22.4, accessHours: 7.4, savedHours: 7 });
  });

  test("Long Grade 2.4 takes about 37 workshop hours, 7 to 8 cell hours, and costs 34,000 to 37,000 with tax", () => {
    const rateOf = new Map(catalogue.operations.map((operation) => [operation.id, operation.rate]));
    const hoursAt = (rate: string) =>
      labourOf(operationsOf("long-grade-24").filter((id) => rateOf.get(id) === rate)).hours;
    expect(hoursAt("workshop")).toBeGreaterThan(36);
    expect(hoursAt("workshop")).toBeLessThan(41);
    expect(hoursAt("dyno")).toBeCloseTo(7.6, 6);
    const parts = itemsOf("long-grade-24").reduce((sum, item) => sum + item.priceCents, 0);
    const hours =
      hoursAt("workshop") * hourRates.workshop.priceCents + hoursAt("dyno") * hourRates.dyno.priceCents;
    const withTax = ((parts + hours) * 1.1) / 100;
    expect(withTax).toBeGreaterThan(34_000);
    expect(withTax).toBeLessThan(37_000);
  });
});

describe("the data holds together", () => {
  const unique = (ids: readonly string[]) =>
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  const itemIds = new Set(catalogue.items.map(({ id }) => id));
  const operationIds = new Set(catalogue.operations.map(({ id }) => id));
  const accessIds = new Set(catalogue.access.map(({ id }) => id));

  test("no id or code stands for two things", () => {
    unique([...catalogue.items, ...catalogue.groups, ...catalogue.rules].map(({ id }) => id));
    unique(catalogue.items.map(({ code }) => code));
    unique([...catalogue.operations, ...catalogue.access].map(({ id }) => id));
  });

  const missing = (names: readonly string[], known: ReadonlySet<string>) =>
    names.filter((name) => !known.has(name));

  test("every operation, access work and item that is named exists", () => {
    expect(
      missing(
        catalogue.items.flatMap(({ operations }) => operations),
        operationIds,
      ),
    ).toEqual([]);
    expect(
      missing(
        catalogue.operations.flatMap(({ access }) => access),
        accessIds,
      ),
    ).toEqual([]);
    expect(
      missing(
        catalogue.packages.flatMap(({ items }) => items),
        itemIds,
      ),
    ).toEqual([]);
    expect(missing(catalogue.rules.flatMap(itemsNamedBy), itemIds)).toEqual([]);
  });

  test("every operation belongs to an item", () => {
    expect(
      missing([...operationIds], new Set(catalogue.items.flatMap(({ operations }) => operations))),
    ).toEqual([]);
  });

  test("nothing is sold below its cost", () => {
    expect(catalogue.items.filter((item) => item.priceCents < item.costCents)).toEqual([]);
  });

  test("steps have ids of their own, limits in order, and hold points somebody to sign", () => {
    const works = [
      ...catalogue.operations.map(({ id, steps }) => ({ id, steps })),
      ...catalogue.access.flatMap(({ id, out, back }) => [{ id, steps: [...out, ...back] }]),
    ];
    for (const { id, steps } of works) {
      expect(steps.length, id).toBeGreaterThan(0);
      unique(steps.map((step) => step.id));
      for (const step of steps) {
        if (step.kind === "hold-point") expect(step.signer, `${id}/${step.id}`).toBeDefined();
        if (step.kind !== "measurement" && step.kind !== "torque") continue;
        expect(step.unit, `${id}/${step.id}`).toBeTruthy();
        const middle = step.target ?? step.low ?? Number.NaN;
        expect(step.low, `${id}/${step.id}`).toBeLessThanOrEqual(middle);
        expect(middle, `${id}/${step.id}`).toBeLessThanOrEqual(step.high ?? Number.NaN);
      }
    }
  });
});

function itemsNamedBy(rule: (typeof catalogue.rules)[number]): string[] {
  if (rule.kind === "capacity") return [...Object.keys(rule.supply), ...Object.keys(rule.demand)];
  return [rule.when, rule.then].flatMap((condition) => (condition === undefined ? [] : itemsIn(condition)));
}

function itemsIn(condition: Condition): string[] {
  if ("item" in condition) return [condition.item];
  if ("all" in condition) return condition.all.flatMap(itemsIn);
  if ("any" in condition) return condition.any.flatMap(itemsIn);
  return "not" in condition ? itemsIn(condition.not) : [];
}
