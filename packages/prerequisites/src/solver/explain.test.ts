// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import fc from "fast-check";
import { expect, test } from "vitest";
import { completePrerequisites } from "../complete/complete-prerequisites";
import { obstacles } from "../explain/obstacles";
import { reasonsFor } from "../explain/reasons-for";
import { waysOut } from "../explain/ways-out";
import { whyNot } from "../explain/why-not";
import type { Rule } from "../model/model";
import { bruteForce } from "../testing/brute-force";
import { onlyOf } from "../testing/only-of";
import { randomQuestion, randomQuestionWithDerived } from "../testing/random-model";
import { clingoSearch } from "./clingo-search";

const RUNS = 400;
const search = () => clingoSearch(60_000);

test("every added item has a chain of broken rules back to a choice", { timeout: 60_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(fc.oneof(randomQuestion(9), randomQuestionWithDerived(7)), async (question) => {
      const { add } = await completePrerequisites(question, search());
      const chosen = question.chosen ?? [];
      const reasons = reasonsFor(question, add);
      expect(reasons.map(({ item }) => item)).toEqual(add);
      for (const { item, chain } of reasons) {
        expect(chain[0]?.item).toBe(item);
        for (const [at, { item: of, causes }] of chain.entries()) {
          expect(causes).not.toContain(of);
          const next = chain[at + 1];
          if (next) expect(causes).toContain(next.item);
          else expect(causes.length === 0 || causes.some((id) => chosen.includes(id))).toBe(true);
        }
        expect(new Set(chain.map((step) => step.item)).size).toBe(chain.length);
      }
    }),
    { numRuns: RUNS },
  );
});

test("a chain goes back over as many rules as it takes", async () => {
  const rules: Rule[] = [
    { id: "fuel", kind: "needs", when: { item: "blower" }, then: { item: "pump" } },
    { id: "current", kind: "needs", when: { item: "pump" }, then: { item: "wiring" } },
  ];
  const items = ["blower", "pump", "wiring"].map((id) => ({ id }));
  const question = { model: { items, rules }, chosen: ["blower"] };
  const { add } = await completePrerequisites(question, search());
  const wiring = reasonsFor(question, add).find(({ item }) => item === "wiring");
  expect(wiring?.chain.map(({ item, causes }) => [item, causes])).toEqual([
    ["wiring", ["pump"]],
    ["pump", ["blower"]],
  ]);
});

test("a circle of needs is entered where the choice asks for it", () => {
  const items = ["blower", "pump", "wiring"].map((id) => ({ id }));
  const rules: Rule[] = [
    {
      id: "feed",
      kind: "needs",
      when: { item: "blower" },
      then: { any: [{ item: "wiring" }, { item: "pump" }] },
    },
    {
      id: "power",
      kind: "needs",
      when: { item: "pump" },
      then: { item: "wiring" },
      because: "It draws current.",
    },
    { id: "load", kind: "needs", when: { item: "wiring" }, then: { item: "pump" } },
  ];
  const [pump, wiring] = reasonsFor({ model: { items, rules }, chosen: ["blower"] }, ["pump", "wiring"]);
  expect(pump?.chain).toEqual([{ item: "pump", rule: "feed", because: "", causes: ["blower"] }]);
  expect(wiring?.chain).toEqual([
    { item: "wiring", rule: "power", because: "It draws current.", causes: ["pump"] },
    ...(pump?.chain ?? []),
  ]);
});

test("the solver says of one item what looking at every selection says", { timeout: 60_000 }, async () => {
  const seen = { possible: 0, impossible: 0, "time-limit": 0 };
  await fc.assert(
    fc.asyncProperty(randomQuestion(7), fc.nat(6), async (question, at) => {
      const chosen = question.chosen ?? [];
      const item = question.model.items[at]?.id ?? "";
      fc.pre(item !== "" && !chosen.includes(item) && !question.barred?.includes(item));
      fc.pre(bruteForce(question) !== null);
      const answer = await whyNot(question, item, search());
      seen[answer.status] += 1;
      const isPossible = bruteForce({ ...question, chosen: [...chosen, item] }) !== null;
      expect(answer.status).toBe(isPossible ? "possible" : "impossible");
      if (answer.status !== "impossible") return;
      const { groups, rules, replaces, ...obstacle } = answer.obstacle;
      const named = new Set([item, ...obstacle.chosen, ...groups, ...rules]);
      const only = onlyOf({ ...question, chosen: [...chosen, item] }, named);
      expect(bruteForce(only)).toBeNull();
      if (replaces.length === 0) return;
      const rest = [...chosen.filter((id) => !replaces.includes(id)), item];
      expect(bruteForce({ ...question, chosen: rest })).not.toBeNull();
      for (const id of replaces) expect(bruteForce({ ...question, chosen: [...rest, id] })).toBeNull();
    }),
    { numRuns: RUNS },
  );
  expect(Math.min(seen.possible, seen.impossible)).toBeGreaterThan(RUNS / 20);
});

test("what propagation names against an item the solver names too", async () => {
  const items = ["bar", "winch", "rack"].map((id) => ({ id }));
  const rules: Rule[] = [
    { id: "axle", kind: "capacity", base: 100, demand: { bar: 60, winch: 35, rack: 30 } },
  ];
  const question = { model: { items, rules }, chosen: ["bar", "winch"] };
  const [found] = obstacles(question);
  expect(found).toMatchObject({ item: "rack", chosen: ["bar", "winch"], replaces: ["winch"] });
  expect(await whyNot(question, "rack", search())).toEqual({ status: "impossible", obstacle: found });
});

test("for each member of a clash it is said what would be possible without it", {
  timeout: 60_000,
}, async () => {
  let clashes = 0;
  await fc.assert(
    fc.asyncProperty(randomQuestion(7), async (question) => {
      const { status, clash } = await completePrerequisites(question, search());
      fc.pre(status === "impossible");
      clashes += 1;
      const ways = await waysOut(question, clash, search());
      expect(ways.map(({ id }) => id)).toEqual([...clash.chosen, ...clash.groups, ...clash.rules]);
      for (const { id, completion } of ways) {
        const { items, groups = [], rules = [] } = question.model;
        const others = [...(question.chosen ?? []), ...[...groups, ...rules].map((each) => each.id)];
        const rest = onlyOf(
          { ...question, model: { items, groups, rules } },
          new Set(others.filter((each) => each !== id)),
        );
        expect(completion.status === "optimal" ? completion.add : null).toEqual(bruteForce(rest));
      }
    }),
    { numRuns: 60 },
  );
  expect(clashes).toBe(60);
});
