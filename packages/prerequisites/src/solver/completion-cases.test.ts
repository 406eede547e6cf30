// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { expect, test } from "vitest";
import { alternativeCompletions } from "../complete/alternative-completions";
import { completePrerequisites } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import type { Rule } from "../model/model";
import { clingoSearch } from "./clingo-search";

const complete = (question: CompletionQuestion) => completePrerequisites(question, clingoSearch(30_000));

/** The worked example of docs/engineering/prerequisites-complete.md. */
const blower: CompletionQuestion = {
  model: {
    items: [
      { id: "blower" },
      { id: "pump-a", price: 400, leadDays: 9 },
      { id: "pump-b", price: 650, leadDays: 2 },
      { id: "calibration", price: 300, leadDays: 3 },
    ],
    rules: [
      {
        id: "pump",
        kind: "needs",
        when: { item: "blower" },
        then: { any: [{ item: "pump-a" }, { item: "pump-b" }] },
      },
      { id: "map", kind: "needs", when: { item: "blower" }, then: { item: "calibration" } },
    ],
  },
  chosen: ["blower"],
};

test("the worked example, by price and by lead time", async () => {
  expect(await complete(blower)).toMatchObject({
    status: "optimal",
    add: ["pump-a", "calibration"],
    total: 700,
    because: [
      { item: "pump-a", rules: ["pump"] },
      { item: "calibration", rules: ["map"] },
    ],
  });
  expect(await complete({ ...blower, minimise: "leadDays" })).toMatchObject({
    add: ["pump-b", "calibration"],
    total: 3,
  });
});

test("the worked example's clash leaves out what has no part in it", async () => {
  const excludes: Rule = { id: "no-b", kind: "excludes", when: { item: "blower" }, then: { item: "pump-b" } };
  const model = { ...blower.model, rules: [...(blower.model.rules ?? []), excludes] };
  expect(await complete({ ...blower, model, barred: ["pump-a"] })).toEqual({
    status: "impossible",
    add: [],
    total: null,
    bound: null,
    because: [],
    clash: { chosen: ["blower"], groups: [], rules: ["pump", "no-b"] },
  });
});

test("a pump that just fits is enough, and prices that differ in the twentieth digit are told apart", async () => {
  const model = {
    items: [
      { id: "engine" },
      { id: "short", price: 1 },
      { id: "dear", price: "100000000000000000000.02" },
      { id: "fits", price: "100000000000000000000.01" },
    ],
    rules: [
      {
        id: "fuel",
        kind: "capacity" as const,
        demand: { engine: 100 },
        supply: { short: "109.999999999999999999999", dear: 110, fits: 110 },
        reservePct: 10,
      },
    ],
  };
  expect(await complete({ model, chosen: ["engine"] })).toMatchObject({ status: "optimal", add: ["fits"] });
});

test("cheapest, least workshop time and soonest stand side by side, a completion that is two of them once", async () => {
  const model = {
    items: [
      { id: "cheap", price: 100, hours: 4, leadDays: 5 },
      { id: "quick", price: 200, hours: 1, leadDays: 2 },
      { id: "worse", price: 300, hours: 5, leadDays: 6 },
    ],
    groups: [{ id: "one", pick: "exactly-one" as const, items: ["cheap", "quick", "worse"] }],
  };
  expect(await alternativeCompletions({ model }, clingoSearch(30_000))).toMatchObject([
    { bestFor: ["price"], completion: { add: ["cheap"] }, price: 100, hours: 4, leadDays: 5 },
    { bestFor: ["hours", "leadDays"], completion: { add: ["quick"] }, price: 200, hours: 1, leadDays: 2 },
  ]);
  const none = { model, barred: ["cheap", "quick", "worse"] };
  expect(await alternativeCompletions(none, clingoSearch(30_000))).toEqual([]);
});

test("prices that add up beyond any number are refused", async () => {
  const question = {
    model: {
      items: [
        { id: "a", price: 1e308 },
        { id: "b", price: 1e308 },
      ],
    },
  };
  await expect(complete(question)).rejects.toMatchObject({ code: "too-large", path: "items" });
});

test("0.1 and 0.2 add up to 0.3", async () => {
  const model = {
    items: [
      { id: "a", price: 0.1 },
      { id: "b", price: 0.2 },
    ],
    rules: [{ id: "both", kind: "needs" as const, then: { all: [{ item: "a" }, { item: "b" }] } }],
  };
  expect(await complete({ model })).toMatchObject({ add: ["a", "b"], total: 0.3, bound: 0.3 });
});

test("a part that is not the slowest may take as long as the slowest when that saves an item", async () => {
  const model = {
    items: [
      { id: "slow", price: 5, leadDays: 9 },
      { id: "half-1", price: 5, leadDays: 1 },
      { id: "half-2", price: 5, leadDays: 1 },
      { id: "whole", price: 10, leadDays: 8 },
    ],
    rules: [
      { id: "one", kind: "needs" as const, then: { item: "slow" } },
      {
        id: "other",
        kind: "needs" as const,
        then: { any: [{ item: "whole" }, { all: [{ item: "half-1" }, { item: "half-2" }] }] },
      },
    ],
  };
  expect(await complete({ model })).toMatchObject({ add: ["slow", "whole"], total: 15 });
});

test("needs in a circle are kept together, and nothing chosen needs nothing", async () => {
  const circle = ["a", "b", "c"].map((id, at, all): Rule => {
    return { id: `after-${id}`, kind: "needs", when: { item: id }, then: { item: all[(at + 1) % 3] ?? id } };
  });
  const model = { items: [{ id: "a" }, { id: "b" }, { id: "c" }], rules: circle };
  expect((await complete({ model, chosen: ["b"] })).add).toEqual(["a", "c"]);
  expect(await complete({ model })).toMatchObject({ status: "optimal", add: [], total: 0, bound: 0 });
  expect(await complete({ model: { items: [] } })).toMatchObject({ status: "optimal", add: [], total: 0 });
});

test("an empty group that asks for one is the whole clash", async () => {
  const model = { items: [{ id: "a" }], groups: [{ id: "none", pick: "exactly-one" as const, items: [] }] };
  expect(await complete({ model, chosen: ["a"] })).toMatchObject({
    status: "impossible",
    clash: { chosen: [], groups: ["none"], rules: [] },
  });
});

test("a rule that needs and excludes its own item makes the item impossible", async () => {
  const rules: Rule[] = [
    { id: "self", kind: "needs", when: { item: "a" }, then: { item: "a" } },
    { id: "not-self", kind: "excludes", when: { item: "a" }, then: { item: "a" } },
  ];
  expect((await complete({ model: { items: [{ id: "a" }], rules }, chosen: ["a"] })).clash).toEqual({
    chosen: ["a"],
    groups: [],
    rules: ["not-self"],
  });
});

test("fifty thousand items are no obstacle", { timeout: 60_000 }, async () => {
  const items = Array.from({ length: 50_000 }, (_, at) => ({ id: `i${at}`, price: 1 }));
  const rules = items.slice(1, 1_000).map((item, at): Rule => {
    return {
      id: `r${at}`,
      kind: "needs",
      when: { item: `i${at}` },
      then: { any: [{ item: item.id }, { item: "i49999" }] },
    };
  });
  expect(await complete({ model: { items, rules }, chosen: ["i0"] })).toMatchObject({
    status: "optimal",
    total: 1,
  });
});

test.each([
  [{ ...blower, chosen: ["turbine"] }, "unknown-id", "chosen[0]"],
  [{ ...blower, chosen: ["blower", "blower"] }, "doubled-id", "chosen[1]"],
  [{ ...blower, barred: ["blower"] }, "chosen-and-barred", "barred[0]"],
])("bad input %#: %s is refused with its place", async (question, code, path) => {
  await expect(complete(question)).rejects.toMatchObject({
    code,
    path,
    message: expect.stringMatching(/[.]$/),
  });
});
