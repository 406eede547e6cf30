import type { Condition } from "@buildproof/prerequisites";
import { describe, expect, test } from "vitest";
import { ruleContent } from "./part-content";
import { ruleSentence } from "./rule-sentence";

const names = { item: (code: string) => code.toUpperCase() };
const head = { because: "Why.", source: "From.", safety: false, models: [], position: 0 };
const needs = (when: Condition | null, what: Condition) =>
  // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
  ruleContent.parse({ ...head, kind: "needs", when, then: what });

describe("a rule reads as one sentence", () => {
  test("with a need, a clash, and what every build needs", () => {
    const blower = { item: "blower" };
    expect(ruleSentence(needs(blower, { item: "cooler" }), names)).toBe(
      "When the build has “BLOWER”, it needs “COOLER”.",
    );
    const clash = ruleContent.parse({ ...needs(blower, { item: "winch" }), kind: "excludes" });
    expect(ruleSentence(clash, names)).toBe("When the build has “BLOWER”, it cannot have “WINCH”.");
    expect(ruleSentence(needs(null, { item: "inspection" }), names)).toBe("Every build needs “INSPECTION”.");
  });

  test("with lists inside lists held together by their words", () => {
    const when = { all: [{ item: "a" }, { any: [{ item: "b" }, { item: "c" }] }] };
    const what = { any: [{ item: "d" }, { all: [{ item: "e" }, { fact: "odometerKm", atLeast: 80_000 }] }] };
    expect(ruleSentence(needs(when, what), names)).toBe(
      "When the build has “A” and either “B” or “C”, it needs “D” or both “E” and at least 80,000 km on the odometer.",
    );
  });

  test("with what must not be there", () => {
    const when = {
      all: [
        { not: { item: "a" } },
        { not: { fact: "trailerGtmKg", atLeast: 2_000 } },
        { not: { fact: "directInjection", atLeast: 1 } },
        { not: { any: [{ item: "b" }, { item: "c" }] } },
      ],
    };
    expect(ruleSentence(needs(when, { item: "d" }), names)).toBe(
      "When the build has no “A”, less than 2,000 kg of loaded trailer, no direct injection and no “B” and no “C”, it needs “D”.",
    );
  });

  test("with a capacity, its figures and its reserve; a long list is counted", () => {
    const demand = Object.fromEntries([1, 2, 3, 4, 5, 6].map((n) => [`d${n}`, n]));
    const capacity = {
      ...head,
      kind: "capacity",
      quantity: "fuel at 6,000 rpm",
      unit: "kg/h",
      link: "high-pressure-pump",
      baseFact: "highPressureFuelKgPerH",
      supply: { pump: 40 },
      demand,
      reservePct: 10,
    };
    expect(ruleSentence(ruleContent.parse(capacity), names)).toBe(
      "High-pressure fuel pump, fuel at 6,000 rpm: what is asked (“D1” 1 kg/h, “D2” 2 kg/h, “D3” 3 kg/h, “D4” 4 kg/h and 2 more) is never more than what the vehicle gives together with “PUMP” 40 kg/h, with 10 % kept in reserve.",
    );
    expect(
      ruleSentence(ruleContent.parse({ ...capacity, supply: {}, demand: {}, reservePct: 0 }), names),
    ).toBe(
      "High-pressure fuel pump, fuel at 6,000 rpm: what is asked is never more than what the vehicle gives.",
    );
  });
});
