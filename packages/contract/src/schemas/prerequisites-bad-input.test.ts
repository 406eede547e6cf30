// biome-ignore-all lint/suspicious/noThenProperty: `then` is the contract's own word and nothing awaits a rule.
import { expect, test } from "vitest";
import { runCalculation } from "../run/run-calculation";

const items = [{ id: "blower" }, { id: "pump", price: 400 }];
const needs = (id: string, when: string, then: string) => ({
  id,
  kind: "needs",
  when: { item: when },
  then: { item: then },
});

test.each([
  ["an unknown chosen item", { items, chosen: ["turbine"] }, "unknown-id", "chosen[0]"],
  [
    "an unknown item in a rule",
    { items, rules: [needs("r", "blower", "turbine")] },
    "unknown-id",
    "rules[0].then",
  ],
  ["an id that is used twice", { items: [...items, { id: "pump" }] }, "doubled-id", "items[2].id"],
  [
    "an item chosen and barred",
    { items, chosen: ["pump"], barred: ["pump"] },
    "chosen-and-barred",
    "barred[0]",
  ],
  ["a negative price", { items: [{ id: "pump", price: -1 }] }, "invalid-field", "items[0].price"],
  [
    "a negative reserve",
    { items, rules: [{ id: "r", kind: "capacity", reservePct: -5 }] },
    "invalid-field",
    "rules[0].reservePct",
  ],
])("%s is refused with a sentence and its place", async (_, input, code, path) => {
  for (const [name, own] of [
    ["prerequisites-check", input],
    ["prerequisites-complete", { ...input, minimise: "price" }],
  ] as const) {
    const answer = await runCalculation(name, own);
    expect(answer).toMatchObject({
      ok: false,
      error: { code, path, message: expect.stringMatching(/^[A-Z].*[.]$/) },
    });
  }
});

test.each([
  ["nothing at all", { items: [] }, []],
  ["a rule about its own item", { items, rules: [needs("r", "pump", "pump")], chosen: ["pump"] }, []],
  [
    "needs in a circle",
    { items, rules: [needs("r", "pump", "blower"), needs("s", "blower", "pump")], chosen: ["pump"] },
    ["blower"],
  ],
  [
    "an empty group of which one may be in",
    { items, groups: [{ id: "g", pick: "at-most-one", items: [] }] },
    [],
  ],
])("%s is a question like any other", async (_, input, add) => {
  const answer = await runCalculation("prerequisites-complete", { ...input, minimise: "price" });
  expect(answer).toMatchObject({ ok: true, value: { status: "optimal", add } });
});
