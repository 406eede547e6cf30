// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkPrerequisites } from "../check/check-prerequisites";
import type { Model, Rule } from "../model/model";
import { fixAll, fixesFor } from "./fixes-for";

/** Invented figures of the demo workshop, prices in cents. */
const model: Model = {
  items: [
    { id: "blower", price: 1_490_000, hours: 11.5 },
    { id: "pump", price: 194_000, hours: 2.7, leadDays: 5 },
    { id: "pump-in-stock", price: 231_000, hours: 2.7 },
    { id: "pipes", price: 34_000, hours: 0.3 },
    { id: "port-kit", price: 410_000, hours: 6 },
    { id: "plugs", price: 26_000, hours: 1.2 },
    { id: "calibration", price: 165_000, hours: 0.8 },
  ],
  groups: [{ id: "one-pump", pick: "at-most-one", items: ["pump", "pump-in-stock"] }],
  rules: [
    {
      id: "hp-fuel",
      kind: "capacity",
      base: 133,
      supply: { pump: 40, "pump-in-stock": 40, "port-kit": 90 },
      demand: { blower: 146 },
      reservePct: 10,
    },
    {
      id: "pump-pipes",
      kind: "needs",
      when: { any: [{ item: "pump" }, { item: "pump-in-stock" }] },
      then: { item: "pipes" },
    },
    { id: "blower-plugs", kind: "needs", when: { item: "blower" }, then: { item: "plugs" } },
    { id: "blower-calibration", kind: "needs", when: { item: "blower" }, then: { item: "calibration" } },
  ],
};

describe("fixes for one finding", () => {
  test("come cheapest first and bring along what they need themselves", () => {
    expect(fixesFor(model, ["blower"], {}, { rule: "hp-fuel" })).toEqual([
      { add: ["pump", "pipes"], price: 228_000, hours: 3, leadDays: 5, worsens: [] },
      { add: ["pump-in-stock", "pipes"], price: 265_000, hours: 3, leadDays: 0, worsens: [] },
      { add: ["port-kit"], price: 410_000, hours: 6, leadDays: 0, worsens: [] },
    ]);
  });

  test("do not offer what is barred", () => {
    const fixes = fixesFor(model, ["blower"], {}, { rule: "hp-fuel" }, { barred: ["pump"] });
    expect(fixes.map(({ add }) => add[0])).toEqual(["pump-in-stock", "port-kit"]);
  });

  test("are none for a finding that is not there, or that adding cannot clear", () => {
    expect(fixesFor(model, [], {}, { rule: "hp-fuel" })).toEqual([]);
    const excluded: Model = {
      items: [{ id: "a" }, { id: "b" }],
      rules: [{ id: "x", kind: "excludes", when: { item: "a" }, then: { item: "b" } }],
    };
    expect(fixesFor(excluded, ["a", "b"], {}, { rule: "x" })).toEqual([]);
  });

  test("say which other finding they make worse", () => {
    const hot: Model = {
      ...model,
      rules: [
        ...(model.rules ?? []),
        { id: "amps", kind: "capacity", base: 10, demand: { blower: 18, "port-kit": 5 } },
      ],
    };
    const portKit = fixesFor(hot, ["blower"], {}, { rule: "hp-fuel" }).find(({ add }) =>
      add.includes("port-kit"),
    );
    expect(portKit?.worsens).toEqual(["amps"]);
  });

  test("leave out what only a part asked for that is left out itself", () => {
    const parts: Model = {
      items: ["a", "b", "c", "f"].map((id) => ({ id })),
      rules: [
        { id: "a-f", kind: "needs", when: { item: "a" }, then: { item: "f" } },
        { id: "a-c", kind: "needs", when: { item: "a" }, then: { item: "c" } },
        { id: "cap", kind: "capacity", supply: { a: 1, f: 1 }, demand: { b: 1 } },
      ],
    };
    expect(fixesFor(parts, ["b"], {}, { rule: "cap" }).map(({ add }) => add)).toEqual([["f"]]);
  });

  test("two small parts together can be cheaper than one large", () => {
    const parts: Model = {
      items: [
        { id: "fan", price: 10 },
        { id: "duct", price: 20 },
        { id: "radiator", price: 100 },
        { id: "heat" },
      ],
      rules: [
        { id: "cool", kind: "capacity", supply: { fan: 1, duct: 1, radiator: 2 }, demand: { heat: 2 } },
      ],
    };
    expect(fixesFor(parts, ["heat"], {}, { rule: "cool" }).map(({ add }) => add)).toEqual([
      ["fan", "duct"],
      ["radiator"],
    ]);
  });
});

test("everything missing is closed at once for the ledger", () => {
  const all = fixAll(model, ["blower"], {});
  expect(all).toMatchObject({ add: ["pump", "pipes", "plugs", "calibration"], price: 419_000, hours: 5 });
  expect(checkPrerequisites(model, ["blower", ...(all?.add ?? [])]).ok).toBe(true);
  expect(fixAll(model, [], {})).toMatchObject({ add: [], price: 0 });
});

const IDS = ["a", "b", "c", "d", "e", "f"] as const;
const item = fc.constantFrom(...IDS).map((id) => ({ item: id }));
const small = fc.dictionary(fc.constantFrom(...IDS), fc.nat(6), { maxKeys: 4, noNullPrototype: true });
const rule: fc.Arbitrary<Omit<Rule, "id">> = fc.oneof(
  fc.record({ kind: fc.constant("needs" as const), when: item, then: item }),
  fc.record({
    kind: fc.constant("needs" as const),
    when: item,
    then: fc.record({ any: fc.array(item, { minLength: 1, maxLength: 3 }) }),
  }),
  fc.record({ kind: fc.constant("excludes" as const), when: item, then: item }),
  fc.record({ kind: fc.constant("capacity" as const), supply: small, demand: small }),
);

test("a fix removes its finding, adds no other, has nothing to spare, and is found when one item is enough", () => {
  fc.assert(
    fc.property(
      fc.array(rule, { minLength: 1, maxLength: 6 }),
      fc.subarray([...IDS], { maxLength: 3 }),
      fc.array(fc.nat(9), { minLength: 6, maxLength: 6 }),
      (bare, chosen, prices) => {
        const rules = bare.map((each, index) => ({ ...each, id: `r${index}` }) as Rule);
        const small: Model = { items: IDS.map((id, index) => ({ id, price: prices[index] ?? 0 })), rules };
        const before = new Set(checkPrerequisites(small, chosen).findings.map((finding) => finding.rule));
        const opened = (added: readonly string[], target: string) =>
          checkPrerequisites(small, [...chosen, ...added]).findings.filter(
            (finding) => finding.rule === target || !before.has(finding.rule),
          );
        for (const target of before) {
          const fixes = fixesFor(small, chosen, {}, { rule: target }, { limit: 99 });
          for (const { add, price } of fixes) {
            expect(opened(add, target)).toEqual([]);
            for (const spare of add) {
              expect(
                opened(
                  add.filter((id) => id !== spare),
                  target,
                ).length,
              ).toBeGreaterThan(0);
            }
            expect(price).toBe(add.reduce((sum, id) => sum + (prices[IDS.indexOf(id as "a")] ?? 0), 0));
          }
          expect(fixes.map(({ price }) => price)).toEqual(
            fixes.map(({ price }) => price).toSorted((a, b) => a - b),
          );
          const singles = IDS.filter((id) => !chosen.includes(id) && opened([id], target).length === 0);
          for (const single of singles) expect(fixes.some(({ add }) => add.join() === single)).toBe(true);
        }
      },
    ),
    { numRuns: 400 },
  );
});

test("a catalogue of two hundred items answers within a tenth of a second", () => {
  const items = Array.from({ length: 200 }, (_, index) => ({ id: `i${index}`, price: (index * 7919) % 500 }));
  const rules: Rule[] = Array.from({ length: 150 }, (_, index) => ({
    id: `r${index}`,
    kind: "needs",
    when: { item: `i${index}` },
    then: { any: [{ item: `i${index + 1}` }, { item: `i${(index * 13) % 200}` }] },
  }));
  const supply = Object.fromEntries(items.slice(100).map(({ id }, index) => [id, 1 + (index % 7)]));
  const large: Model = {
    items,
    rules: [...rules, { id: "cap", kind: "capacity", supply, demand: { i0: 9 } }],
  };
  fixesFor(large, ["i0"], {}, { rule: "r0" });
  const start = performance.now();
  for (const { rule: id } of checkPrerequisites(large, ["i0"]).findings)
    fixesFor(large, ["i0"], {}, { rule: id });
  expect(performance.now() - start).toBeLessThan(1_000);
});
