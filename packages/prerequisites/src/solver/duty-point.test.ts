// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { expect, test } from "vitest";
import { capacityUse } from "../check/capacity-use";
import { completePrerequisites } from "../complete/complete-prerequisites";
import { obstacles } from "../explain/obstacles";
import { reasonsFor } from "../explain/reasons-for";
import { type DerivedItem, derivedFrom } from "../model/derived-item";
import type { Model } from "../model/model";
import { withDerived } from "../model/with-derived";
import { clingoSearch } from "./clingo-search";

/** A blower with either pulley on either fuel: four duty points with a fuel demand each; invented figures in kg/h. */
const model: Model = {
  items: [
    { id: "blower" },
    { id: "large-pulley", price: 100 },
    { id: "small-pulley", price: 120 },
    { id: "petrol" },
    { id: "ethanol" },
    { id: "pump", price: 900 },
  ],
  groups: [
    { id: "one-pulley", pick: "at-most-one", items: ["large-pulley", "small-pulley"] },
    { id: "one-fuel", pick: "exactly-one", items: ["petrol", "ethanol"] },
  ],
  rules: [
    {
      id: "driven",
      kind: "needs",
      when: { item: "blower" },
      then: { any: [{ item: "large-pulley" }, { item: "small-pulley" }] },
    },
    {
      id: "fuel",
      kind: "capacity",
      base: 130,
      supply: { pump: 60 },
      demand: { "large-petrol": 118, "small-petrol": 146, "large-ethanol": 170, "small-ethanol": 205 },
      reservePct: 10,
    },
  ],
};
const derived: readonly DerivedItem[] = ["large", "small"].flatMap((pulley) =>
  ["petrol", "ethanol"].map((fuel) => ({
    id: `${pulley}-${fuel}`,
    from: { all: ["blower", `${pulley}-pulley`, fuel] },
  })),
);
const complete = (chosen: readonly string[]) =>
  completePrerequisites({ model, derived, chosen }, clingoSearch(30_000));

test("a smaller pulley asks for more fuel, and so for the pump", async () => {
  expect(await complete(["blower", "petrol"])).toMatchObject({ add: ["large-pulley"], total: 100 });
  const small = await complete(["blower", "petrol", "small-pulley"]);
  expect(small).toMatchObject({ add: ["pump"], total: 900, because: [{ item: "pump", rules: ["fuel"] }] });
  const chosen = ["blower", "petrol", "small-pulley"];
  const [use] = capacityUse(withDerived(model, derived), [...chosen, ...derivedFrom(derived, chosen)]);
  expect(use).toMatchObject({ demand: 146, met: false, demanders: [{ item: "small-petrol", amount: 146 }] });
});

test("the pump is there for what makes the duty point together, and no hidden name is told", async () => {
  const question = { model, derived, chosen: ["blower", "small-pulley", "petrol"] };
  expect(reasonsFor(question, ["pump"])).toEqual([
    {
      item: "pump",
      chain: [{ item: "pump", rule: "fuel", because: "", causes: ["blower", "small-pulley", "petrol"] }],
    },
  ]);
});

test("a pulley for which no supply would be enough is named before it is chosen", async () => {
  const question = { model, derived, chosen: ["blower", "ethanol"] };
  expect(obstacles(question).find(({ item }) => item === "small-pulley")).toEqual({
    item: "small-pulley",
    chosen: ["blower", "ethanol"],
    groups: [],
    rules: ["fuel"],
    barred: [],
    replaces: ["ethanol"],
  });
  expect((await complete(["blower", "ethanol", "small-pulley"])).clash).toEqual({
    chosen: ["blower", "small-pulley", "ethanol"],
    groups: [],
    rules: ["fuel"],
  });
});

test("what comes from itself or from nothing known is refused with its place", async () => {
  const circle = [
    { id: "a", from: { any: ["b"] } },
    { id: "b", from: { all: ["blower", "a"] } },
  ];
  await expect(
    completePrerequisites({ model, derived: [...derived, ...circle] }, clingoSearch(30_000)),
  ).rejects.toMatchObject({
    code: "cycle",
    path: "derived",
    message: expect.stringMatching(/a from b from a/),
  });
  const unknown = [...derived, { id: "a", from: { any: ["turbine"] } }];
  await expect(
    completePrerequisites({ model, derived: unknown }, clingoSearch(30_000)),
  ).rejects.toMatchObject({ code: "unknown-id", path: "derived[4].from" });
});
