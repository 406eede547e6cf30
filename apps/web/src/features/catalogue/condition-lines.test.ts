import { expect, test } from "vitest";
import { itemLine, linesOf, listLine, type SentCondition, sentCondition } from "./condition-lines";

test("a condition comes out of its lines as it went in", () => {
  const conditions: readonly SentCondition[] = [
    { item: "blower" },
    { not: { item: "blower" } },
    { any: [{ item: "a" }, { item: "b" }] },
    { all: [{ item: "a" }, { not: { any: [{ item: "b" }, { item: "c" }] } }] },
    { not: { not: { item: "a" } } },
    { any: [{ all: [{ item: "a" }, { item: "b" }] }, { fact: "odometerKm", atLeast: "80000" }] },
  ];
  for (const condition of conditions) expect(sentCondition(linesOf(condition))).toEqual(condition);
});

test("no line is no condition, and a list of one line is that line", () => {
  expect(sentCondition(linesOf(null))).toBeNull();
  expect(sentCondition(listLine("any", [itemLine("a")]))).toEqual({ item: "a" });
});
