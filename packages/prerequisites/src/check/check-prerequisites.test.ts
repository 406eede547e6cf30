// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Condition, Model, Rule } from "../model/model";
import { checkPrerequisites } from "./check-prerequisites";

const pump: Model = {
  items: [{ id: "pump" }, { id: "engine" }],
  rules: [
    {
      id: "fuel",
      kind: "capacity",
      supply: { pump: 110 },
      demand: { engine: 100 },
      reservePct: 10,
      because: "full load",
    },
  ],
};

describe("capacities", () => {
  test("a pump that just fits is not refused, although (1 + 10/100)·100 is not 110 in binary", () => {
    expect((1 + 10 / 100) * 100).not.toBe(110);
    expect(checkPrerequisites(pump, ["pump", "engine"])).toEqual({ ok: true, findings: [] });
  });

  test("one hundredth less is refused, and by how much is exact", () => {
    const rules: Rule[] = [
      { id: "fuel", kind: "capacity", supply: { pump: 109.99 }, demand: { engine: 100 }, reservePct: 10 },
    ];
    expect(checkPrerequisites({ ...pump, rules }, ["pump", "engine"]).findings).toEqual([
      { rule: "fuel", kind: "capacity", items: ["engine"], because: "", shortBy: 0.01 },
    ]);
  });

  test("three supplies of 0.1 carry a demand of 0.3", () => {
    const items = ["a", "b", "c", "d"].map((id) => ({ id }));
    const rules: Rule[] = [
      { id: "r", kind: "capacity", supply: { a: 0.1, b: 0.1, c: 0.1 }, demand: { d: 0.3 } },
    ];
    expect(checkPrerequisites({ items, rules }, ["a", "b", "c", "d"]).ok).toBe(true);
  });
});

describe("findings", () => {
  const items = ["blower", "plugs", "cooler", "lamps"].map((id) => ({ id }));

  test("come as groups first and then rules in order, with the selected items that bring them about", () => {
    const model: Model = {
      items,
      groups: [{ id: "light", pick: "at-most-one", items: ["lamps", "cooler"] }],
      rules: [
        {
          id: "r1",
          kind: "needs",
          when: { all: [{ item: "cooler" }, { item: "blower" }] },
          then: { item: "plugs" },
          because: "colder",
        },
        { id: "r2", kind: "excludes", when: { item: "lamps" }, then: { item: "cooler" }, because: "covered" },
      ],
    };
    expect(checkPrerequisites(model, ["blower", "cooler", "lamps"]).findings).toEqual([
      {
        rule: "light",
        kind: "group",
        items: ["lamps", "cooler"],
        because: expect.stringContaining("at most one"),
      },
      { rule: "r1", kind: "needs", items: ["cooler", "blower"], because: "colder" },
      { rule: "r2", kind: "excludes", items: ["lamps"], because: "covered" },
    ]);
  });

  test("a rule without when always holds, and a missing fact is 0", () => {
    const model: Model = {
      items,
      rules: [{ id: "mass", kind: "needs", then: { fact: "payloadKg", atLeast: 0.1 } }],
    };
    expect(checkPrerequisites(model, []).findings).toEqual([
      { rule: "mass", kind: "needs", items: [], because: "" },
    ]);
    expect(checkPrerequisites(model, [], { payloadKg: 0.1 }).ok).toBe(true);
  });

  test.each([
    ["at-most-one", [true, true, false]],
    ["exactly-one", [false, true, false]],
    ["at-least-one", [false, true, true]],
  ] as const)("%s of a group", (pick, expected) => {
    const model: Model = { items, groups: [{ id: "g", pick, items: ["plugs", "cooler"] }] };
    const oks = [[], ["plugs"], ["plugs", "cooler"]].map((chosen) => checkPrerequisites(model, chosen).ok);
    expect(oks).toEqual(expected);
  });
});

describe("ids", () => {
  test.each([
    [{ items: [{ id: "a" }, { id: "a" }] }, [], "doubled-id"],
    [{ items: [{ id: "a" }], groups: [{ id: "a", pick: "at-most-one", items: [] }] }, [], "doubled-id"],
    [{ items: [{ id: "a" }], rules: [{ id: "r", kind: "needs", then: { item: "b" } }] }, [], "unknown-id"],
    [{ items: [{ id: "a" }], rules: [{ id: "r", kind: "capacity", demand: { b: 1 } }] }, [], "unknown-id"],
    [{ items: [{ id: "a" }] }, ["constructor"], "unknown-id"],
    [{ items: [{ id: "a" }] }, ["a", "a"], "doubled-id"],
  ] as const satisfies readonly (readonly [Model, readonly string[], string])[])(
    "case %#",
    (model, chosen, code) => {
      expect(() => checkPrerequisites(model, chosen)).toThrow(expect.objectContaining({ code }));
    },
  );

  test("an item chosen and barred at once is refused", () => {
    expect(() => checkPrerequisites(pump, ["pump"], {}, ["pump"])).toThrow(
      expect.objectContaining({ code: "chosen-and-barred" }),
    );
  });

  test("names of the language are only names", () => {
    const model: Model = {
      items: [{ id: "toString" }],
      rules: [{ id: "r", kind: "needs", then: { fact: "constructor", atLeast: 1 } }],
    };
    expect(checkPrerequisites(model, []).ok).toBe(false);
    expect(checkPrerequisites(model, ["toString"], { constructor: 1 }).ok).toBe(true);
  });
});

const IDS = ["a", "b", "c", "d", "e"] as const;
const condition: fc.Arbitrary<Condition> = fc.letrec<{ condition: Condition }>((tie) => ({
  condition: fc.oneof(
    { maxDepth: 3 },
    fc.record({ item: fc.constantFrom(...IDS) }),
    fc.record({ fact: fc.constantFrom("f", "g"), atLeast: fc.integer({ min: -2, max: 2 }) }),
    fc.record({ all: fc.array(tie("condition"), { maxLength: 3 }) }),
    fc.record({ any: fc.array(tie("condition"), { maxLength: 3 }) }),
    fc.record({ not: tie("condition") }),
  ),
})).condition;
/** Tenths, so that the naive evaluator can work in whole numbers. */
const tenths = fc.integer({ min: 0, max: 30 }).map((n) => n / 10);
const amounts = fc.dictionary(fc.constantFrom(...IDS), tenths, { maxKeys: 4, noNullPrototype: true });
const rule: fc.Arbitrary<Omit<Rule, "id">> = fc.oneof(
  fc.record({ kind: fc.constant("needs" as const), when: condition, then: condition }),
  fc.record({ kind: fc.constant("excludes" as const), when: condition, then: condition }),
  fc.record({
    kind: fc.constant("capacity" as const),
    base: tenths,
    supply: amounts,
    demand: amounts,
    reservePct: fc.nat(20),
  }),
);

test("the check agrees with a naive evaluator", () => {
  type Facts = Readonly<Record<string, number>>;
  const holds = (c: Condition, chosen: readonly string[], facts: Facts): boolean => {
    if ("item" in c) return chosen.includes(c.item);
    if ("fact" in c) return (facts[c.fact] ?? 0) >= Number(c.atLeast);
    if ("all" in c) return c.all.every((each) => holds(each, chosen, facts));
    if ("any" in c) return c.any.some((each) => holds(each, chosen, facts));
    return !holds(c.not, chosen, facts);
  };
  const inTenths = (value: unknown) => Math.round(Number(value ?? 0) * 10);
  const isBroken = (r: Omit<Rule, "id">, chosen: readonly string[], facts: Facts): boolean => {
    const one = r as Rule;
    if (one.kind === "capacity") {
      const sum = (of: object | undefined) =>
        Object.entries(of ?? {}).reduce(
          (total, [id, n]) => total + (chosen.includes(id) ? inTenths(n) : 0),
          0,
        );
      return 100 * (inTenths(one.base) + sum(one.supply)) < (100 + Number(one.reservePct)) * sum(one.demand);
    }
    if (one.when && !holds(one.when, chosen, facts)) return false;
    return holds(one.then, chosen, facts) === (one.kind === "excludes");
  };
  fc.assert(
    fc.property(
      fc.array(rule, { maxLength: 6 }),
      fc.subarray([...IDS]),
      fc.dictionary(fc.constantFrom("f", "g"), fc.integer({ min: -2, max: 2 }), { noNullPrototype: true }),
      (bare, chosen, facts) => {
        const rules = bare.map((each, index) => ({ ...each, id: `r${index}` }) as Rule);
        const { findings, ok } = checkPrerequisites(
          { items: IDS.map((id) => ({ id })), rules },
          chosen,
          facts,
        );
        const expected = rules.filter((each) => isBroken(each, chosen, facts)).map(({ id }) => id);
        expect(findings.map((finding) => finding.rule)).toEqual(expected);
        expect(ok).toBe(expected.length === 0);
      },
    ),
    { numRuns: 500 },
  );
});
